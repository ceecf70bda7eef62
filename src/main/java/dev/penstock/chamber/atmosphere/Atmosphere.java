package dev.penstock.chamber.atmosphere;

import dev.penstock.errors.Require;

/** The air around a rocket. */
public interface Atmosphere {

    /**
     * Air at one altitude.
     *
     * @param altitude geometric altitude (m)
     * @param pressure pressure (Pa), zero in empty space
     * @param temperature kinetic temperature (K)
     * @param density density (kg/m³), zero in empty space
     * @param soundSpeed speed of sound (m/s); above about 90 km only a scale for Mach numbers
     */
    record State(double altitude, double pressure, double temperature, double density, double soundSpeed) {

        public State {
            Require.finite("atmosphere", "altitude (m)", altitude);
            Require.notNegative("atmosphere", "pressure (Pa)", pressure);
            Require.positive("atmosphere", "temperature (K)", temperature);
            Require.notNegative("atmosphere", "density (kg/m³)", density);
            Require.positive("atmosphere", "speed of sound (m/s)", soundSpeed);
        }
    }

    /**
     * @param altitude geometric altitude above mean sea level (m)
     * @return the air there
     * @throws dev.penstock.errors.OutsideValidity if the altitude is below the range of the model
     */
    State at(double altitude);
}
