package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.LoadedPropellant;
import java.util.List;

/**
 * Vapour of the propellant itself that fills its tank, heated at the engine.
 *
 * <pre>m = CF · p V M / (R T)</pre>
 *
 * M and T, {@code own_vapour_temperature}, stand in the propellant's file; ideal gas. The vapour stays in the tank at cut-off and counts as dry
 * mass. Source of the collapse factor: [nasa-sp-8112]; temperatures are common practice, no source.
 */
public final class OwnVapour {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.own-vapour",
            "Pressurisation by the propellant's own vapour",
            "m = CF p V M/(R T)",
            "cryogenic propellants, tank pressure to 1 MPa",
            "that of the collapse factor: ±30 %",
            List.of("nasa-sp-8112", "common practice, no source"));

    private OwnVapour() {}

    /**
     * @param propellant what the tank holds
     * @param volume tank volume (m³)
     * @param collapseFactor gas used over gas without collapse (-)
     * @return vapour in the empty tank (kg)
     */
    public static double mass(LoadedPropellant propellant, double volume, double collapseFactor) {
        Require.positive("own vapour", "volume (m³)", volume);
        double temperature = propellant
                .propellant()
                .needed(
                        propellant.propellant().tank().ownVapourTemperature(),
                        "tank.own_vapour_temperature",
                        "a temperature such as \"300 K\", or choose another pressurant");
        double molarMass = propellant.propellant().fluid().molarMass();
        return collapseFactor
                * propellant.tankPressure()
                * volume
                * molarMass
                / (Constants.MOLAR_GAS_CONSTANT * temperature);
    }
}
