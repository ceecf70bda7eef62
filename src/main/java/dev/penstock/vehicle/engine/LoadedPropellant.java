package dev.penstock.vehicle.engine;

import dev.penstock.errors.Require;

/**
 * A propellant as it is in the tank.
 *
 * @param id fluid id, as in {@code fluids/<id>.toml}
 * @param density density at the loading temperature (kg/m³)
 * @param temperature loading temperature (K)
 * @param tankPressure absolute tank pressure (Pa)
 * @param vapourPressure vapour pressure at the loading temperature (Pa)
 */
public record LoadedPropellant(
        String id, double density, double temperature, double tankPressure, double vapourPressure) {

    /** Below this loading temperature (K) a tank carries insulation. */
    private static final double CRYOGENIC_BELOW = 200;

    public LoadedPropellant {
        Require.positive(id, "loading density (kg/m³)", density);
        Require.positive(id, "loading temperature (K)", temperature);
        Require.positive(id, "tank pressure (Pa)", tankPressure);
        Require.notNegative(id, "vapour pressure (Pa)", vapourPressure);
    }

    /** @return whether the tank needs insulation against boil-off or icing */
    public boolean cryogenic() {
        return temperature < CRYOGENIC_BELOW;
    }
}
