package dev.penstock.vehicle.ascent;

/**
 * One moment of the flight.
 *
 * @param time time since release (s)
 * @param segment name of the part of the flight
 * @param altitude height (m)
 * @param downrange distance along the ground (m)
 * @param airSpeed speed through the air (m/s)
 * @param inertialSpeed speed against the stars (m/s)
 * @param pathAngle angle of the path through the air above the horizon (rad)
 * @param pitch angle of the thrust above the horizon (rad)
 * @param mass mass (kg)
 * @param thrust thrust (N)
 * @param throttle throttle setting (-), zero when coasting
 * @param isp specific impulse at this moment (s), zero when coasting
 * @param drag drag (N)
 * @param ambientPressure pressure of the air (Pa)
 * @param dynamicPressure dynamic pressure (Pa)
 * @param mach Mach number (-)
 * @param acceleration acceleration by thrust and drag (m/s²)
 */
public record AscentPoint(
        double time,
        String segment,
        double altitude,
        double downrange,
        double airSpeed,
        double inertialSpeed,
        double pathAngle,
        double pitch,
        double mass,
        double thrust,
        double throttle,
        double isp,
        double drag,
        double ambientPressure,
        double dynamicPressure,
        double mach,
        double acceleration) {}
