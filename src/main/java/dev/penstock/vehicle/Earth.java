package dev.penstock.vehicle;

import dev.penstock.errors.Require;

/**
 * A round, rotating earth with a central gravity field: g = μ/r². Figures of [wgs-84]; the radius is the equatorial one
 * everywhere, so that heights are off by up to 21 km at the poles and g by 0.5 %, which a concept estimate does not see.
 */
public final class Earth {

    /** Gravitational parameter μ (m³/s²). */
    public static final double GRAVITATIONAL_PARAMETER = 3.986004418e14;

    /** Equatorial radius (m). */
    public static final double RADIUS = 6_378_137.0;

    /** Rotation rate (rad/s). */
    public static final double ROTATION_RATE = 7.292115e-5;

    private Earth() {}

    /**
     * @param altitude height above the round earth (m)
     * @return speed on a circular orbit there (m/s)
     */
    public static double circularSpeed(double altitude) {
        return perigeeSpeed(altitude, altitude);
    }

    /**
     * Vis-viva at perigee: v² = μ (2/r_p − 1/a).
     *
     * @param perigeeAltitude height of the lowest point (m)
     * @param apogeeAltitude height of the highest point (m)
     * @return speed at the lowest point (m/s)
     */
    public static double perigeeSpeed(double perigeeAltitude, double apogeeAltitude) {
        Require.notNegative("orbit", "perigee altitude (m)", perigeeAltitude);
        Require.within("orbit", "apogee altitude (m)", apogeeAltitude, perigeeAltitude, 1e12);
        double perigee = RADIUS + perigeeAltitude;
        double semiMajorAxis = RADIUS + (perigeeAltitude + apogeeAltitude) / 2;
        return Math.sqrt(GRAVITATIONAL_PARAMETER * (2 / perigee - 1 / semiMajorAxis));
    }

    /**
     * Part of the ground's eastward speed that helps a launch straight into the plane of the orbit: from
     * cos i = cos φ sin A it is ω R cos φ sin A = ω R cos i, whatever the latitude.
     *
     * @param inclination inclination of the orbit (rad)
     * @return speed (m/s), negative for a retrograde orbit
     */
    public static double rotationCredit(double inclination) {
        return ROTATION_RATE * RADIUS * Math.cos(inclination);
    }
}
