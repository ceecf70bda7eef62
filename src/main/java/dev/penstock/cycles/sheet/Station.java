package dev.penstock.cycles.sheet;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.StationKey;
import dev.penstock.errors.Require;

/**
 * State of one medium at one numbered place of an engine. Pressures are absolute; they are total pressures except in the
 * chamber, where the nozzle stagnation pressure stands.
 *
 * @param number number of the station, the same in tables, JSON and charts
 * @param key where it is
 * @param medium name of what flows, for example "oxygen" or "fuel-rich gas"
 * @param content what that is
 * @param pressure absolute pressure (Pa)
 * @param temperature temperature (K)
 * @param density density (kg/m³)
 * @param enthalpy specific enthalpy relative to the elements at 298.15 K (J/kg)
 * @param massFlow mass flow (kg/s)
 */
public record Station(
        int number,
        StationKey key,
        String medium,
        Content content,
        double pressure,
        double temperature,
        double density,
        double enthalpy,
        double massFlow) {

    public Station {
        Require.positive(key.title(), "pressure (Pa)", pressure);
        Require.positive(key.title(), "temperature (K)", temperature);
        Require.positive(key.title(), "density (kg/m³)", density);
        Require.finite(key.title(), "enthalpy (J/kg)", enthalpy);
        Require.notNegative(key.title(), "mass flow (kg/s)", massFlow);
    }

    /** Name for people, for example "fuel pump discharge". */
    public String name() {
        return key.title();
    }
}
