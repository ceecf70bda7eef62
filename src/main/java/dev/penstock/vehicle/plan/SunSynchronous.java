package dev.penstock.vehicle.plan;

import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.Target;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Inclination at which the oblate earth turns the plane of an orbit once a year, with the sun.
 *
 * <pre>cos i = −(2/3) Ω' a^(7/2) (1 − e²)² / (J2 √μ R²)</pre>
 *
 * Ω' is a turn in a year of 365.2422 days, J2 = 1.08263e-3. Secular rate of the node to the first order in J2: [curtis-2014] §4.7.
 */
public final class SunSynchronous {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.sun-synchronous",
            "Inclination of a sun-synchronous orbit",
            "cos i = −(2/3) Ω' a^(7/2) (1 − e²)² / (J2 √μ R²), Ω' a turn in a year",
            "closed orbits about the earth, up to about 5970 km where they are round",
            "first order in J2: within some hundredths of a degree",
            List.of("curtis-2014"));

    private static final double J2 = 1.08263e-3;
    private static final double YEAR = 365.2422 * 86400;

    private SunSynchronous() {}

    /**
     * @param orbit an orbit
     * @return its inclination (rad), above a quarter turn; empty where the plane of so high an orbit turns too slowly at any
     */
    public static OptionalDouble inclination(Target.Orbit orbit) {
        Planet earth = Planet.EARTH;
        double axis = earth.radius() + (orbit.perigee() + orbit.apogee()) / 2;
        double eccentricity = (orbit.apogee() - orbit.perigee()) / (2 * axis);
        double rate = 2 * Math.PI / YEAR;
        double cosine = -2.0
                / 3
                * rate
                * Math.pow(axis, 3.5)
                * Math.pow(1 - eccentricity * eccentricity, 2)
                / (J2 * Math.sqrt(earth.gravitationalParameter()) * earth.radius() * earth.radius());
        return cosine < -1 ? OptionalDouble.empty() : OptionalDouble.of(Math.acos(cosine));
    }
}
