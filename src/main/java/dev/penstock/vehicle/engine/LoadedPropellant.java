package dev.penstock.vehicle.engine;

import dev.penstock.errors.PenstockException;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.traits.TankTraits;

/**
 * A propellant as it is in the tank.
 *
 * @param propellant what it is
 * @param density density at the loading temperature (kg/m³)
 * @param temperature loading temperature (K)
 * @param tankPressure absolute tank pressure (Pa)
 * @param vapourPressure vapour pressure at the loading temperature (Pa)
 */
public record LoadedPropellant(
        Propellant propellant, double density, double temperature, double tankPressure, double vapourPressure) {

    public LoadedPropellant {
        String id = propellant.id();
        Require.positive(id, "loading density (kg/m³)", density);
        Require.positive(id, "loading temperature (K)", temperature);
        Require.positive(id, "tank pressure (Pa)", tankPressure);
        Require.notNegative(id, "vapour pressure (Pa)", vapourPressure);
    }

    /**
     * @param propellant what it is
     * @param density density as loaded (kg/m³)
     * @param temperature loading temperature (K)
     * @param tankPressure absolute tank pressure (Pa)
     * @return that, with its vapour pressure; zero where it has none at that temperature
     */
    public static LoadedPropellant of(Propellant propellant, double density, double temperature, double tankPressure) {
        return new LoadedPropellant(
                propellant, density, temperature, tankPressure, vapourPressure(propellant, temperature));
    }

    private static double vapourPressure(Propellant propellant, double temperature) {
        try {
            return propellant.fluid().vapourPressure(temperature);
        } catch (PenstockException noVapourPressureThere) {
            return 0;
        }
    }

    /** @return fluid id, as in {@code fluids/<id>.toml} */
    public String id() {
        return propellant.id();
    }

    /** @return whether the tank needs insulation against boil-off or icing */
    public boolean cryogenic() {
        return temperature < TankTraits.COLD_BELOW;
    }
}
