package dev.penstock.cycles.sheet;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.combustion.WorkingState;
import dev.penstock.cycles.concept.ExhaustDesign;
import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Thrust of turbine gas dumped through a nozzle of its own: one-dimensional isentropic flow of the turbine's gas.
 * <pre>
 * throat: v = a, v = √(2(h₀ − h(p, s₀)));   exit: ρ v = ρ_t v_t/ε;   F_vac = η ṁ (v_e + p_e/(ρ_e v_e))
 * </pre>
 * Source: [nasa-sp-125]. Area ratio 1 or more. Against the ambient pressure see {@link ExhaustJet}. The efficiency stands for friction, divergence and leakage together.
 */
public final class ExhaustNozzle {

    public static final ModelCard CARD = new ModelCard(
            "cycles.exhaust-nozzle",
            "Thrust of dumped turbine gas",
            "F = η ṁ (v_e + p_e/(ρ_e v_e)), ρ_e v_e = ρ_t v_t/ε, isentropic",
            "choked flow of the turbine gas, area ratio 1 or more",
            "5 % in thrust by the efficiency alone",
            List.of("nasa-sp-125"));

    private ExhaustNozzle() {}

    /**
     * @param name which exhaust
     * @param gas gas
     * @param pressure total pressure (Pa)
     * @param enthalpy total enthalpy (J/kg)
     * @param massFlow mass flow (kg/s)
     * @param design area ratio and efficiency
     * @return the jet
     */
    public static ExhaustJet jet(
            String name, WorkingFluid gas, double pressure, double enthalpy, double massFlow, ExhaustDesign design) {
        Require.positive(name, "mass flow (kg/s)", massFlow);
        double entropy = gas.atPressureEnthalpy(pressure, enthalpy).entropy();
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
        WorkingState throat = gas.atPressureEntropy(throatPressure, entropy);
        double throatFlux = throat.density() * throat.soundSpeed();
        WorkingState exit =
                design.areaRatio() <= 1 ? throat : exit(name, gas, entropy, enthalpy, throat, design.areaRatio());
        double velocity = Math.sqrt(2 * (enthalpy - exit.enthalpy()));
        double impulse = velocity + exit.pressure() / (exit.density() * velocity);
        double throatArea = massFlow / throatFlux;
        return new ExhaustJet(
                name,
                massFlow,
                design.efficiency() * massFlow * impulse,
                throatArea * Math.max(1, design.areaRatio()),
                throatArea,
                pressure,
                throat.gamma());
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
