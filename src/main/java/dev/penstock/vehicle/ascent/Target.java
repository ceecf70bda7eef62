package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/** Where a flight goes. */
public sealed interface Target {

    /**
     * A closed orbit.
     *
     * @param perigee height of its lowest point (m)
     * @param apogee height of its highest point (m)
     */
    record Orbit(double perigee, double apogee) implements Target {

        public Orbit {
            Require.within("orbit", "perigee altitude (m)", perigee, 80e3, 1e9);
            Require.within("orbit", "apogee altitude (m)", apogee, perigee, 1e9);
        }

        @Override
        public double energyFrom(Planet planet, double level) {
            return -planet.gravitationalParameter() / (2 * planet.radius() + level + apogee);
        }

        @Override
        public double highestLevel() {
            return perigee;
        }

        @Override
        public OptionalDouble highest() {
            return OptionalDouble.of(apogee);
        }
    }

    /**
     * Away from the planet for good.
     *
     * @param c3 characteristic energy, the square of the speed that is left far away (m²/s²)
     */
    record Escape(double c3) implements Target {

        public Escape {
            Require.notNegative("escape", "characteristic energy (m²/s²)", c3);
        }

        @Override
        public double energyFrom(Planet planet, double level) {
            return c3 / 2;
        }

        @Override
        public double highestLevel() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public OptionalDouble highest() {
            return OptionalDouble.empty();
        }
    }

    /**
     * @param altitude height (m)
     * @return the circular orbit there
     */
    static Orbit circular(double altitude) {
        return new Orbit(altitude, altitude);
    }

    /**
     * @param planet the planet
     * @param level height at which the way there is entered level (m)
     * @return energy per mass on that way (J/kg), zero at rest at infinity; a perigee above the level is raised at the apogee
     */
    double energyFrom(Planet planet, double level);

    /**
     * @param planet the planet
     * @param level height at which the way there is entered level (m)
     * @return speed there on that way (m/s)
     */
    default double speedFrom(Planet planet, double level) {
        double potential = planet.gravitationalParameter() / (planet.radius() + level);
        return Math.sqrt(2 * (energyFrom(planet, level) + potential));
    }

    /** @return greatest height at which the way there may be entered level (m) */
    double highestLevel();

    /** @return height of the highest point (m); empty where there is none */
    OptionalDouble highest();
}
