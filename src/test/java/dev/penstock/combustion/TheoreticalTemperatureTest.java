package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.ElementalComposition;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Flame temperature and molar mass of a pair against a published case. */
class TheoreticalTemperatureTest {

    private static final SpeciesLibrary LIBRARY = SpeciesLibrary.open(Path.of("."));

    /**
     * NASA RP-1311 part II, example 8: inputs as printed; T and M recomputed from the same data by an independent
     * calculation (printed output not at hand) that took 1 atm as standard pressure, which alone moves T by 1.3 K.
     */
    @Test
    void hydrogenAndOxygenBurnAtTheTemperatureOfExampleEight() {
        Reactants oxygen = liquid("oxygen", Map.of("O", 2.0), 31.998e-3, -12.979e3);
        Reactants hydrogen = liquid("hydrogen", Map.of("H", 2.0), 2.016e-3, -9.012e3);
        Reactants mixture = oxygen.mixedWith(hydrogen, 1 / 6.55157);
        GasState gas = EquilibriumSolver.of(LIBRARY, mixture).solveEnthalpyPressure(mixture, 5.33172e6);
        assertThat(gas.temperature()).isCloseTo(3388.2, withinPercentage(0.1));
        assertThat(gas.molarMass()).isCloseTo(12.720e-3, withinPercentage(0.1));
        assertThat(gas.enthalpy()).isCloseTo(-1026.05e3, within(0.3e3));
    }

    static Reactants liquid(String id, Map<String, Double> formula, double molarMass, double molarEnthalpy) {
        return new Reactants(
                ElementalComposition.ofFormula(formula, molarMass), molarEnthalpy / molarMass, Map.of(id, 1.0));
    }
}
