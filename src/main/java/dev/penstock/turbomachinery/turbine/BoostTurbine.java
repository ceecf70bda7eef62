package dev.penstock.turbomachinery.turbine;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.combustion.WorkingState;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.Require;
import dev.penstock.input.Usual;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;

/**
 * What drives a boost pump: a turbine on hot gas or on warmed propellant, whose power is known and whose efficiency is stated.
 * <pre>
 * ṁ_d = P/(η Δh_s),   Δh_s = h1 - h(p2, s1)      beside other turbines or a valve: the pressures are known
 * Δh_s = P/(η ṁ),     h(p2, s1) = h1 - Δh_s      behind other turbines: all the gas passes, p2 is found
 * </pre>
 */
public final class BoostTurbine {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.boost-turbine",
            "Boost pump driven by hot gas or warmed propellant",
            "ṁ_d = P/(η Δh_s) where the pressures are known; h(p₂, s₁) = h₁ − P/(η ṁ) where all the gas passes",
            "efficiency stated; p₂ above a tenth of p₁",
            "25 % on flow or drop, by the efficiency",
            List.of("nasa-sp-8107"));

    /** Usual efficiency (-): slow beside its gas, so that its blades turn at a small part of the best speed. */
    public static final Usual<Double> EFFICIENCY =
            Usual.between(0.35, 0.5, 0.65, Usual.COMMON).because("gas turbine of a boost pump");

    private static final double LOWEST = 0.1;
    private static final double TIGHT = 1e-13;

    private BoostTurbine() {}

    /**
     * @param power needed at the shaft (W)
     * @param gas what drives it
     * @param inletPressure p1 (Pa)
     * @param inletEnthalpy h1, relative to the elements (J/kg)
     * @param exitPressure p2 (Pa)
     * @param efficiency of the turbine (-)
     * @return drive flow (kg/s)
     * @throws dev.penstock.errors.OutsideValidity if the pressure does not fall through the turbine
     */
    public static double driveFlow(
            double power,
            WorkingFluid gas,
            double inletPressure,
            double inletEnthalpy,
            double exitPressure,
            double efficiency) {
        double entropy = gas.atPressureEnthalpy(inletPressure, inletEnthalpy).entropy();
        double drop =
                inletEnthalpy - gas.atPressureEntropy(exitPressure, entropy).enthalpy();
        return Require.positive(CARD.id(), "power (W)", power)
                / (Require.within(CARD.id(), "efficiency (-)", efficiency, 0.05, 1)
                        * Require.positive(CARD.id(), "drop through the turbine (J/kg)", drop));
    }

    /**
     * @param power needed at the shaft (W)
     * @param gas what drives it
     * @param inletPressure p1 (Pa)
     * @param inletEnthalpy h1, relative to the elements (J/kg)
     * @param massFlow ṁ (kg/s)
     * @param efficiency of the turbine (-)
     * @return p2 (Pa)
     * @throws LimitReached if not even a tenth of the inlet pressure gives the power
     */
    public static double exitPressure(
            double power,
            WorkingFluid gas,
            double inletPressure,
            double inletEnthalpy,
            double massFlow,
            double efficiency) {
        WorkingState inlet = gas.atPressureEnthalpy(inletPressure, inletEnthalpy);
        double drop = Require.positive(CARD.id(), "power (W)", power)
                / (Require.within(CARD.id(), "efficiency (-)", efficiency, 0.05, 1) * massFlow);
        double most = inletEnthalpy
                - gas.atPressureEntropy(LOWEST * inletPressure, inlet.entropy()).enthalpy();
        if (!(drop < most)) {
            throw new LimitReached(
                    "boost pump on turbine exhaust",
                    String.format(
                            Locale.ROOT,
                            "%.4g kW for a boost pump take %.4g kJ out of each kg of turbine exhaust, and a tenth of its"
                                    + " pressure would leave %.4g; drive it with gas from before the turbines",
                            power / 1e3,
                            drop / 1e3,
                            most / 1e3));
        }
        return RootFinder.between(
                        "pressure behind the turbine of a boost pump",
                        p -> inletEnthalpy
                                - gas.atPressureEntropy(p, inlet.entropy()).enthalpy()
                                - drop,
                        LOWEST * inletPressure,
                        inletPressure,
                        TIGHT)
                .value();
    }
}
