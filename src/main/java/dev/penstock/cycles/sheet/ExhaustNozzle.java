package dev.penstock.cycles.sheet;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.combustion.WorkingFluid;
import dev.penstock.combustion.WorkingState;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.ExhaustDesign;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;

/**
 * Thrust of turbine gas, or of a coolant that its jacket has made gas, dumped through a nozzle of its own: one-dimensional isentropic
 * flow of that gas.
 * <pre>
 * throat: v = a, v = √(2(h₀ − h(p, s₀)));   exit: ρ v = ρ_t v_t/ε;   F_vac = η ṁ cos θ (v_e + p_e/(ρ_e v_e)),  θ from the axis of the engine
 * into the main nozzle: p_e that of the main nozzle's exit, whose area the gas adds to
 * </pre>
 * Source: [nasa-sp-125]. Area ratio 1 or more. Against the ambient pressure see {@link ExhaustJet}. The efficiency stands for friction, divergence and leakage together.
 */
public final class ExhaustNozzle {

    public static final ModelCard CARD = new ModelCard(
            "cycles.exhaust-nozzle",
            "Thrust of dumped turbine gas",
            "F = η ṁ cos θ (v_e + p_e/(ρ_e v_e)), ρ_e v_e = ρ_t v_t/ε, isentropic; in the main nozzle p_e is that of its exit",
            "choked flow of the turbine gas, area ratio 1 or more",
            "5 % in thrust by the efficiency alone",
            List.of("nasa-sp-125"));

    private static final String ENTRY =
            ConceptTables.EXHAUST.of(GasInputs.EXHAUST_INTO).path();

    private ExhaustNozzle() {}

    /**
     * @param part where it leaves
     * @param gas gas
     * @param pressure total pressure (Pa)
     * @param enthalpy total enthalpy (J/kg)
     * @param massFlow mass flow (kg/s)
     * @param design area ratio and efficiency
     * @return the jet
     */
    public static ExhaustJet jet(
            PartKey part, WorkingFluid gas, double pressure, double enthalpy, double massFlow, ExhaustDesign design) {
        String name = part.noun();
        Require.positive(name, "mass flow (kg/s)", massFlow);
        double entropy = gas.atPressureEnthalpy(pressure, enthalpy).entropy();
        WorkingState throat = throat(name, gas, pressure, enthalpy, entropy);
        double throatFlux = throat.density() * throat.soundSpeed();
        WorkingState exit =
                design.areaRatio() <= 1 ? throat : exit(name, gas, entropy, enthalpy, throat, design.areaRatio());
        double velocity = Math.sqrt(2 * (enthalpy - exit.enthalpy()));
        double impulse = velocity + exit.pressure() / (exit.density() * velocity);
        double throatArea = massFlow / throatFlux;
        return new ExhaustJet(
                part,
                massFlow,
                design.efficiency() * massFlow * impulse * Math.cos(design.cant()),
                throatArea * Math.max(1, design.areaRatio()),
                throatArea,
                pressure,
                throat.gamma(),
                design.cant());
    }

    /**
     * Turbine gas led through slots into the main nozzle: it expands beside the main flow, and leaves at its exit pressure.
     * <pre>F_vac = η ṁ (v_e + p_e/(ρ_e v_e)), p_e that of the main nozzle's exit</pre>
     *
     * @param part where it leaves
     * @param gas gas
     * @param pressure total pressure (Pa)
     * @param enthalpy total enthalpy (J/kg)
     * @param massFlow mass flow (kg/s)
     * @param design where it is led in, and efficiency
     * @param chamber chamber whose nozzle it is
     * @return the jet
     * @throws LimitReached if the gas has too little pressure to enter there, or the nozzle ends before
     */
    public static ExhaustJet intoNozzle(
            PartKey part,
            WorkingFluid gas,
            double pressure,
            double enthalpy,
            double massFlow,
            ExhaustDesign design,
            ChamberPerformance chamber) {
        String name = part.noun();
        double place = design.into().orElseThrow();
        if (place > chamber.areaRatio()) {
            throw new LimitReached(
                    ENTRY,
                    String.format(
                            Locale.ROOT,
                            "exhaust.into_area_ratio is %.4g, where the turbine gas is to enter; allowed is 1 to %.4g, where the"
                                    + " nozzle ends",
                            place,
                            chamber.areaRatio()));
        }
        double wall = chamber.profile().at(place, true).pressure();
        double entropy = gas.atPressureEnthalpy(pressure, enthalpy).entropy();
        WorkingState throat = throat(name, gas, pressure, enthalpy, entropy);
        if (throat.pressure() < wall) {
            throw new LimitReached(
                    ENTRY,
                    String.format(
                            Locale.ROOT,
                            "turbine gas of %.3g MPa does not enter at sonic speed where the nozzle has %.3g MPa, at area ratio"
                                    + " %.4g; raise exhaust.into_area_ratio or lower the turbine's pressure ratio",
                            pressure / 1e6,
                            wall / 1e6,
                            place));
        }
        WorkingState exit = gas.atPressureEntropy(chamber.profile().exit().pressure(), entropy);
        double velocity = Math.sqrt(2 * (enthalpy - exit.enthalpy()));
        double impulse = velocity + exit.pressure() / (exit.density() * velocity);
        return new ExhaustJet(
                part,
                massFlow,
                design.efficiency() * massFlow * impulse,
                massFlow / (exit.density() * velocity),
                massFlow / (throat.density() * throat.soundSpeed()),
                pressure,
                throat.gamma(),
                0);
    }

    private static WorkingState throat(
            String name, WorkingFluid gas, double pressure, double enthalpy, double entropy) {
        double throatPressure = RootFinder.between(
                        "throat of the " + name,
                        p -> {
                            WorkingState state = gas.atPressureEntropy(p, entropy);
                            double square = state.soundSpeed() * state.soundSpeed();
                            return 2 * (enthalpy - state.enthalpy()) / square - 1;
                        },
                        0.3 * pressure,
                        0.8 * pressure,
                        1e-12)
                .value();
        return gas.atPressureEntropy(throatPressure, entropy);
    }

    private static WorkingState exit(
            String name, WorkingFluid gas, double entropy, double enthalpy, WorkingState throat, double areaRatio) {
        double flux = throat.density() * throat.soundSpeed() / areaRatio;
        // expanded further than this even a monatomic gas would need more area; real gases condense when it is set too
        // low
        double fastest = Math.sqrt((throat.gamma() + 1) / (throat.gamma() - 1));
        double lowest = -5.0 / 3 * Math.log(areaRatio * fastest);
        double lnRatio = RootFinder.between(
                        "exit of the " + name,
                        ln -> {
                            WorkingState state = gas.atPressureEntropy(throat.pressure() * Math.exp(ln), entropy);
                            return state.density() * Math.sqrt(2 * (enthalpy - state.enthalpy())) / flux - 1;
                        },
                        lowest,
                        0,
                        1e-13)
                .value();
        return gas.atPressureEntropy(throat.pressure() * Math.exp(lnRatio), entropy);
    }
}
