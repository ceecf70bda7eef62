package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.gas.GasCursor;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.quantities.Constants;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Independent library: Cantera 3.2.0 with the same fits (NASA TM-4513, standard pressure 1 bar) and the same species.
 * What remains is Cantera's own convergence and, for the slopes, its finite differences.
 */
class CanteraEquilibriumTest {

    private static final SpeciesLibrary LIBRARY = SpeciesLibrary.open(Path.of("."));

    static List<ReferenceCase> cases() {
        return ReferenceCase.read("cantera_equilibrium.csv");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void adiabaticStateAgreesWithCantera(ReferenceCase c) {
        GasState gas = EquilibriumSolver.of(LIBRARY, c.reactants()).solveEnthalpyPressure(c.reactants(), c.pressure());
        SoftAssertions softly = new SoftAssertions();
        softly.assertThat(gas.temperature()).as("temperature").isCloseTo(c.temperature(), withinPercentage(1e-5));
        softly.assertThat(gas.molarMass()).as("molar mass").isCloseTo(1 / c.gasMoles(), withinPercentage(1e-5));
        softly.assertThat(gas.entropy()).as("entropy").isCloseTo(c.entropy(), withinPercentage(1e-6));
        softly.assertThat(gas.frozenHeatCapacity()).as("frozen cp").isCloseTo(c.frozenCp(), withinPercentage(1e-4));
        softly.assertThat(gas.equilibriumHeatCapacity())
                .as("equilibrium cp")
                .isCloseTo(c.equilibriumCp(), withinPercentage(1e-2));
        softly.assertThat(gas.gammaS()).as("gamma_s").isCloseTo(c.gammaS(), withinPercentage(1e-2));
        c.fractions().forEach((name, x) -> softly.assertThat(gas.moleFractions().getOrDefault(name, 0.0))
                .as(name)
                .isCloseTo(x, within(1e-7 + 1e-6 * x)));
        softly.assertAll();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void gibbsEnergyIsNotAboveThatOfCantera(ReferenceCase c) {
        EquilibriumSolver solver = EquilibriumSolver.of(LIBRARY, c.reactants());
        solver.setPressureTemperature(c.pressure(), c.temperature());
        FrozenGas reference = c.frozen(solver.speciesSet());
        double excess = gibbs(solver) - gibbs(reference);
        double scale = Constants.MOLAR_GAS_CONSTANT * c.temperature() * c.gasMoles();
        assertThat(excess / Math.max(scale, Math.abs(gibbs(reference))))
                .as("excess of Gibbs energy")
                .isLessThan(1e-9);
    }

    private static double gibbs(GasCursor gas) {
        return gas.enthalpy() - gas.temperature() * gas.entropy();
    }
}
