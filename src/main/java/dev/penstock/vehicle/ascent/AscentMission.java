package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;

/**
 * Where the flight starts and ends, and what it must not exceed.
 *
 * @param planet the planet
 * @param inclination inclination of the orbit (rad); the launch goes straight into its plane
 * @param insertionAltitude height at which the ascent ends, level (m)
 * @param apogeeAltitude height of the highest point of the orbit entered (m), at least the insertion altitude
 * @param dynamicPressureLimit dynamic pressure above which the engines are throttled (Pa)
 * @param accelerationLimit acceleration by thrust above which the engines are throttled (m/s²)
 * @param stagingPressureLimit dynamic pressure above which stages should not part (Pa); reported, not enforced
 * @param minimumThrottle lowest throttle setting (-)
 */
public record AscentMission(
        Planet planet,
        double inclination,
        double insertionAltitude,
        double apogeeAltitude,
        double dynamicPressureLimit,
        double accelerationLimit,
        double stagingPressureLimit,
        double minimumThrottle) {

    public AscentMission {
        Require.within("ascent", "inclination (rad)", inclination, 0, Math.PI);
        Require.within("ascent", "insertion altitude (m)", insertionAltitude, 80e3, 2000e3);
        Require.within("ascent", "apogee altitude (m)", apogeeAltitude, insertionAltitude, 1e9);
        Require.positive("ascent", "dynamic pressure limit (Pa)", dynamicPressureLimit);
        Require.positive("ascent", "acceleration limit (m/s²)", accelerationLimit);
        Require.positive("ascent", "dynamic pressure limit at staging (Pa)", stagingPressureLimit);
        Require.within("ascent", "minimum throttle (-)", minimumThrottle, 0.05, 1);
    }

    /** @return energy per mass of the orbit entered (J/kg), zero at infinity */
    double orbitalEnergy() {
        return -planet.gravitationalParameter() / (2 * planet.radius() + insertionAltitude + apogeeAltitude);
    }

    /** @return rotation rate of the air in the plane of the flight (rad/s) */
    double airRotation() {
        return planet.rotationRate() * Math.cos(inclination);
    }
}
