package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.input.Usual;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * What drives a boost pump: a turbine on liquid from behind the main pump, whose exhaust joins the outlet of the boost pump and
 * passes the main pump again.
 * <pre>
 * ṁ_d = P/(η Δh_s),   Δh_s = h2 - h(p_b, s2)        state 2 behind the main pump, p_b behind the boost pump
 * h1  = h_b + (ṁ_d w - P)/ṁ                         inlet of the main pump, w its work per mass
 * </pre>
 * The main pump lifts ṁ + ṁ_d, and its inlet is warmer than the boost pump's outlet.
 */
public final class HydraulicTurbine {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.hydraulic-turbine",
            "Boost pump driven by liquid from behind the main pump",
            "ṁ_d = P/(η Δh_s); h1 = h_b + (ṁ_d w - P)/ṁ",
            "the drive flow stays liquid",
            "15 % on the drive flow",
            List.of("nasa-sp-8107"));

    /** Usual efficiency (-). */
    public static final Usual<Double> EFFICIENCY = Usual.between(0.6, 0.7, 0.8, Usual.COMMON);

    private HydraulicTurbine() {}

    /**
     * @param power needed at the shaft (W)
     * @param fluid what drives it
     * @param behindMain state behind the main pump
     * @param exitPressure pressure behind the boost pump (Pa)
     * @param efficiency of the turbine (-)
     * @param known states of the fluid found lately
     * @return drive flow (kg/s)
     * @throws dev.penstock.errors.OutsideValidity if the pressure does not fall through the turbine
     */
    public static double driveFlow(
            double power,
            Fluid fluid,
            FluidState behindMain,
            double exitPressure,
            double efficiency,
            KnownStates known) {
        double drop =
                behindMain.enthalpy() - fluid.enthalpyAtPressureEntropy(exitPressure, behindMain.entropy(), known);
        return Require.positive(CARD.id(), "power (W)", power)
                / (Require.within(CARD.id(), "efficiency (-)", efficiency, 0.05, 1)
                        * Require.positive(CARD.id(), "drop through the turbine (J/kg)", drop));
    }

    /**
     * @param boostEnthalpy h_b behind the boost pump (J/kg)
     * @param massFlow ṁ through the boost pump (kg/s)
     * @param driveFlow ṁ_d (kg/s)
     * @param work w of the main pump (J/kg)
     * @param power P taken out of the liquid (W)
     * @return enthalpy at the inlet of the main pump (J/kg)
     */
    public static double mixedEnthalpy(
            double boostEnthalpy, double massFlow, double driveFlow, double work, double power) {
        return boostEnthalpy + (driveFlow * work - power) / massFlow;
    }
}
