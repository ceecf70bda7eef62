package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * Where the flight starts and ends, and what it must not exceed.
 *
 * @param planet the planet
 * @param inclination inclination of the orbit (rad); the launch goes straight into its plane
 * @param latitude latitude of the launch site (rad); zero where none is known
 * @param insertionAltitude height at which the ascent ends, level (m)
 * @param target orbit, or way out
 * @param parkingCoast time without thrust in a circular orbit at the insertion altitude before a second burn (s); empty where the
 *     ascent itself ends on the way to the target
 * @param dynamicPressureLimit dynamic pressure above which the engines are throttled (Pa)
 * @param accelerationLimit acceleration by thrust above which the engines are throttled (m/s²)
 * @param stagingPressureLimit dynamic pressure above which stages should not part (Pa); reported, not enforced
 * @param minimumThrottle lowest throttle setting (-)
 * @param heatingLimit free-molecular heat flux ½ρw³ below which the fairing may go overboard and the payload may fly bare (W/m²)
 * @param angleLoad dynamic pressure times angle of attack, in radians, that steering keeps below (Pa)
 */
public record AscentMission(
        Planet planet,
        double inclination,
        double latitude,
        double insertionAltitude,
        Target target,
        OptionalDouble parkingCoast,
        double dynamicPressureLimit,
        double accelerationLimit,
        double stagingPressureLimit,
        double minimumThrottle,
        double heatingLimit,
        double angleLoad) {

    /** Heights (m) nearer to each other than this are one. */
    private static final double SAME = 1;

    /** Free-molecular heat flux that bare payloads are commonly asked to bear (W/m²): common practice, no source. */
    public static final double USUAL_HEATING = 1135;

    /** Dynamic pressure times angle of attack (Pa rad): 20 kPa deg, what winds leave of it; common practice, no source. */
    public static final double USUAL_ANGLE_LOAD = 350;

    /** A mission from the equator to a circular orbit, with the usual limits on heating and angle of attack. */
    public AscentMission(
            Planet planet,
            double inclination,
            double insertionAltitude,
            double orbitAltitude,
            double dynamicPressureLimit,
            double accelerationLimit,
            double stagingPressureLimit,
            double minimumThrottle) {
        this(
                planet,
                inclination,
                0,
                insertionAltitude,
                Target.circular(orbitAltitude),
                OptionalDouble.empty(),
                dynamicPressureLimit,
                accelerationLimit,
                stagingPressureLimit,
                minimumThrottle,
                USUAL_HEATING,
                USUAL_ANGLE_LOAD);
    }

    public AscentMission {
        Require.within("ascent", "inclination (rad)", inclination, 0, Math.PI);
        Require.within("ascent", "latitude (rad)", latitude, -Math.PI / 2, Math.PI / 2);
        Require.within("ascent", "insertion altitude (m)", insertionAltitude, 80e3, 2000e3);
        Require.within("ascent", "insertion altitude (m)", insertionAltitude, 80e3, target.highestLevel() + SAME);
        parkingCoast.ifPresent(coast -> Require.notNegative("ascent", "coast in the parking orbit (s)", coast));
        Require.positive("ascent", "dynamic pressure limit (Pa)", dynamicPressureLimit);
        Require.positive("ascent", "acceleration limit (m/s²)", accelerationLimit);
        Require.positive("ascent", "dynamic pressure limit at staging (Pa)", stagingPressureLimit);
        Require.within("ascent", "minimum throttle (-)", minimumThrottle, 0.05, 1);
        Require.positive("ascent", "limit of free-molecular heating (W/m²)", heatingLimit);
        Require.positive("ascent", "dynamic pressure times angle of attack (Pa)", angleLoad);
    }

    /**
     * @param altitude height at which the ascent ends (m)
     * @return the same mission with that
     */
    public AscentMission insertingAt(double altitude) {
        return new AscentMission(
                planet,
                inclination,
                latitude,
                altitude,
                target,
                parkingCoast,
                dynamicPressureLimit,
                accelerationLimit,
                stagingPressureLimit,
                minimumThrottle,
                heatingLimit,
                angleLoad);
    }

    /** @return energy per mass at which the ascent ends (J/kg), zero at rest at infinity */
    double insertionEnergy() {
        return (parkingCoast.isPresent() ? Target.circular(insertionAltitude) : target)
                .energyFrom(planet, insertionAltitude);
    }

    /** @return energy per mass at which the flight ends (J/kg), after a second burn where there is one */
    public double finalEnergy() {
        return target.energyFrom(planet, insertionAltitude);
    }

    /**
     * @param altitude height of an insertion (m)
     * @return speed there on the way to the target, or in a circular orbit where the target is lower (m/s)
     */
    public double highestSpeed(double altitude) {
        return (altitude > target.highestLevel() ? Target.circular(altitude) : target).speedFrom(planet, altitude);
    }

    /** @return rotation rate of the air in the plane of the flight (rad/s) */
    double airRotation() {
        return planet.rotationRate() * Math.cos(inclination);
    }
}
