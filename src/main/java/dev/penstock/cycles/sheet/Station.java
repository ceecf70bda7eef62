package dev.penstock.cycles.sheet;

import dev.penstock.errors.Require;

/**
 * State of one medium at one numbered place of an engine. Pressures are absolute; they are total pressures except in the
 * chamber, where the nozzle stagnation pressure stands.
 *
 * @param number number of the station, the same in tables, JSON and charts
 * @param name where it is, for example "fuel pump discharge"
 * @param medium what flows, for example "oxygen" or "fuel-rich gas"
 * @param pressure absolute pressure (Pa)
 * @param temperature temperature (K)
 * @param density density (kg/m³)
 * @param enthalpy specific enthalpy relative to the elements at 298.15 K (J/kg)
 * @param massFlow mass flow (kg/s)
 */
public record Station(
        int number,
        String name,
        String medium,
        double pressure,
        double temperature,
        double density,
        double enthalpy,
        double massFlow) {

    public Station {
        Require.positive(name, "pressure (Pa)", pressure);
        Require.positive(name, "temperature (K)", temperature);
        Require.positive(name, "density (kg/m³)", density);
        Require.finite(name, "enthalpy (J/kg)", enthalpy);
        Require.notNegative(name, "mass flow (kg/s)", massFlow);
    }
}
