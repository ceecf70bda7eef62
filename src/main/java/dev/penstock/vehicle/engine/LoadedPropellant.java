package dev.penstock.vehicle.engine;

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
 */
public record LoadedPropellant(Propellant propellant, double density, double temperature, double tankPressure) {

    public LoadedPropellant {
        String id = propellant.id();
        Require.positive(id, "loading density (kg/m³)", density);
        Require.positive(id, "loading temperature (K)", temperature);
        Require.positive(id, "tank pressure (Pa)", tankPressure);
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
