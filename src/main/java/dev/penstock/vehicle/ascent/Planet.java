package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;

/**
 * A round, rotating planet with a central gravity field: g = μ/r².
 *
 * @param gravitationalParameter μ (m³/s²)
 * @param radius radius of the ground (m)
 * @param rotationRate rotation rate (rad/s)
 */
public record Planet(double gravitationalParameter, double radius, double rotationRate) {

    /**
     * The earth with the figures of [wgs-84]. The radius is the equatorial one everywhere: heights are off by up to 21 km
     * at the poles and g by 0.5 %, which a concept estimate does not see.
     */
    public static final Planet EARTH = new Planet(3.986004418e14, 6_378_137.0, 7.292115e-5);

    /** Card of {@link #speed}. */
    public static final ModelCard ORBIT = ModelCard.definition(
            "vehicle.orbit",
            "Speed on an orbit",
            "v = √(μ (2/r − 1/a)), or the difference of two such speeds",
            "round planet",
            "exact within its assumptions");

    /** Card of {@link #rotationCredit}. */
    public static final ModelCard ROTATION = ModelCard.definition(
            "vehicle.rotation",
            "Speed of the rotating ground",
            "ω R cos i",
            "launch into the plane of the orbit",
            "exact within its assumptions");

    public Planet {
        Require.positive("planet", "gravitational parameter (m³/s²)", gravitationalParameter);
        Require.positive("planet", "radius (m)", radius);
        Require.finite("planet", "rotation rate (rad/s)", rotationRate);
    }

    /**
     * @param altitude height above the ground (m)
     * @return speed on a circular orbit there (m/s)
     */
    public double circularSpeed(double altitude) {
        return speed(altitude, altitude, altitude);
    }

    /**
     * Vis-viva: v² = μ (2/r − 1/a).
     *
     * @param altitude height now (m)
     * @param perigeeAltitude height of the lowest point of the orbit (m)
     * @param apogeeAltitude height of the highest point (m)
     * @return speed there (m/s)
     */
    public double speed(double altitude, double perigeeAltitude, double apogeeAltitude) {
        Require.within("orbit", "perigee altitude (m)", perigeeAltitude, 0, 1e12);
        Require.within("orbit", "apogee altitude (m)", apogeeAltitude, perigeeAltitude, 1e12);
        Require.within("orbit", "altitude (m)", altitude, perigeeAltitude, apogeeAltitude);
        double semiMajorAxis = radius + (perigeeAltitude + apogeeAltitude) / 2;
        return Math.sqrt(gravitationalParameter * (2 / (radius + altitude) - 1 / semiMajorAxis));
    }

    /**
     * Part of the ground's eastward speed that helps a launch straight into the plane of the orbit: from
     * cos i = cos φ sin A it is ω R cos φ sin A = ω R cos i, whatever the latitude.
     *
     * @param inclination inclination of the orbit (rad)
     * @return speed (m/s), negative for a retrograde orbit
     */
    public double rotationCredit(double inclination) {
        return rotationRate * radius * Math.cos(inclination);
    }
}
