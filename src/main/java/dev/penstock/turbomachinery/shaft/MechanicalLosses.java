package dev.penstock.turbomachinery.shaft;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.provenance.UncertainInput;
import java.util.List;

/**
 * What lies between the power of the turbines and that of the pumps.
 * <pre>pump power = turbine power · η_m · η_g - accessories</pre>
 *
 * @param mechanicalEfficiency η_m, what bearings and seals leave (-)
 * @param gearEfficiency η_g, what a gearbox leaves (-); 1 without one
 * @param accessoryPower drawn by hydraulic pumps and the like (W)
 */
public record MechanicalLosses(double mechanicalEfficiency, double gearEfficiency, double accessoryPower) {

    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.mechanical-losses",
            "Power balance of a shaft",
            "P_pumps = P_turbines η_m η_g − P_accessories",
            "steady speed",
            "1 to 2 % on the efficiencies",
            List.of("common practice, no source"));

    public MechanicalLosses {
        Require.within("mechanical losses", "mechanical efficiency (-)", mechanicalEfficiency, 0.5, 1);
        Require.within("mechanical losses", "gear efficiency (-)", gearEfficiency, 0.5, 1);
        Require.notNegative("mechanical losses", "accessory power (W)", accessoryPower);
    }

    /**
     * @param geared whether a gearbox stands between turbine and pumps
     * @return the usual losses
     */
    public static MechanicalLosses usual(boolean geared) {
        return new MechanicalLosses(0.985, geared ? 0.98 : 1, 0);
    }

    /** @return efficiencies that are only known within bounds, by their keys in the concept file */
    public static List<UncertainInput> uncertain() {
        return List.of(
                new UncertainInput(
                        "mechanical_efficiency", "-", new Spread(0.97, 0.985, 0.995), "common practice, no source"),
                new UncertainInput("gear_efficiency", "-", new Spread(0.96, 0.98, 0.99), "common practice, no source"));
    }

    /**
     * @param turbinePower delivered by the turbines (W)
     * @return power left for the pumps (W)
     */
    public double powerForPumps(double turbinePower) {
        return turbinePower * mechanicalEfficiency * gearEfficiency - accessoryPower;
    }

    /**
     * @param pumpPower absorbed by the pumps (W)
     * @return power that the turbines must deliver (W)
     */
    public double turbinePower(double pumpPower) {
        return (pumpPower + accessoryPower) / (mechanicalEfficiency * gearEfficiency);
    }
}
