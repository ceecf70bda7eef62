package dev.penstock.turbomachinery.shaft;

import dev.penstock.errors.Require;
import dev.penstock.input.Input;
import dev.penstock.input.Usual;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;

/**
 * What lies between the power of the turbines and that of the pumps.
 * <pre>pump power + power taken off for another shaft = turbine power · η_m · η_g - accessories</pre>
 *
 * @param mechanicalEfficiency η_m, what bearings and seals leave (-)
 * @param gearEfficiency η_g, what a gearbox leaves (-); 1 without one
 * @param accessoryPower drawn by hydraulic pumps and the like (W)
 */
public record MechanicalLosses(double mechanicalEfficiency, double gearEfficiency, double accessoryPower) {

    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.mechanical-losses",
            "Power balance of a shaft",
            "P_pumps + P_taken off = P_turbines η_m η_g − P_accessories",
            "steady speed",
            "1 to 2 % on the efficiencies",
            List.of("common practice, no source"));

    public static final Input<Double> MECHANICAL_EFFICIENCY = Input.ratio(
                    "mechanical_efficiency", Range.of(0.5, 1), "What bearings and seals leave of the turbine power")
            .usual(Usual.between(0.97, 0.985, 0.995, Usual.COMMON));
    public static final Input<Double> GEAR_EFFICIENCY = Input.ratio(
                    "gear_efficiency", Range.of(0.5, 1), "What a gearbox leaves of the turbine power")
            .usual(Usual.between(0.96, 0.98, 0.99, Usual.COMMON));
    public static final Input<Double> ACCESSORY_POWER = Input.quantity(
                    "accessory_power", Dimension.POWER, Range.of(0, 1e8), "Power drawn by hydraulic pumps and the like")
            .usual(Usual.of(0.0, "none unless stated", ""));

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
        return new MechanicalLosses(
                MECHANICAL_EFFICIENCY.standing().value(),
                geared ? GEAR_EFFICIENCY.standing().value() : 1,
                ACCESSORY_POWER.standing().value());
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
