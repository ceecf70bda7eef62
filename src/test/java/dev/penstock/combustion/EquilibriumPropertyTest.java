package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.errors.OutsideValidity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/**
 * Every pair of propellants, mixture ratios from 0.05 to 100, 1 kPa to 100 MPa: the elements balance, or the mixture is
 * too cold for the data and says so. Nothing else may happen.
 */
class EquilibriumPropertyTest {

    @Provide
    Arbitrary<Reactants> oxidizers() {
        return Arbitraries.of(Mixtures.OXIDIZERS);
    }

    @Provide
    Arbitrary<Reactants> fuels() {
        return Arbitraries.of(Mixtures.FUELS);
    }

    @Property(tries = 400)
    void anyMixtureBurnsOrSaysThatItIsTooCold(
            @ForAll("oxidizers") Reactants oxidizer,
            @ForAll("fuels") Reactants fuel,
            @ForAll @DoubleRange(min = -3.0, max = 4.6) double logRatio,
            @ForAll @DoubleRange(min = 6.9, max = 18.4) double logPressure) {
        Reactants mixture = Mixtures.of(oxidizer, fuel, Math.exp(logRatio));
        EquilibriumSolver solver = EquilibriumSolver.of(Mixtures.LIBRARY, mixture);
        double pressure = Math.exp(logPressure);
        try {
            solver.setPressureEnthalpy(pressure, mixture.enthalpy());
        } catch (OutsideValidity e) {
            assertThat(e.quantity()).matches("temperature \\(K\\)|enthalpy \\(J/kg\\)");
            assertThat(mixture.enthalpy()).as(e.getMessage()).isLessThan(-200e3);
            return;
        }
        assertBalanced(solver, mixture, mixture.enthalpy());
        double entropy = solver.entropy();
        double hot = solver.temperature();
        // down the isentrope to a hundredth of the pressure, each station started from the last
        for (int i = 0; i < 9; i++) {
            pressure *= 0.6;
            try {
                solver.setPressureEntropy(pressure, entropy);
            } catch (OutsideValidity e) {
                assertThat(e.getMessage()).contains("100 K");
                return;
            }
            assertThat(solver.temperature()).isLessThanOrEqualTo(hot);
            hot = solver.temperature();
        }
        assertBalanced(solver, mixture, solver.enthalpy());
        GasState state = solver.snapshot();
        assertThat(state.gammaS()).isBetween(0.8, 1.7);
        assertThat(state.equilibriumHeatCapacity()).isGreaterThanOrEqualTo(state.frozenHeatCapacity() * (1 - 1e-9));
        assertThat(state.transport().viscosity()).isBetween(3e-6, 3e-4);
    }

    /** A solution must not depend on which one went before, however far away. */
    @Property(tries = 200)
    void warmStartFindsWhatAColdStartFinds(
            @ForAll("oxidizers") Reactants oxidizer,
            @ForAll("fuels") Reactants fuel,
            @ForAll @DoubleRange(min = -1.0, max = 3.0) double logRatio,
            @ForAll @DoubleRange(min = -1.0, max = 3.0) double otherLogRatio,
            @ForAll @DoubleRange(min = 9, max = 17.5) double logPressure,
            @ForAll @DoubleRange(min = 250, max = 5000) double temperature) {
        Reactants first = Mixtures.of(oxidizer, fuel, Math.exp(otherLogRatio));
        Reactants second = Mixtures.of(oxidizer, fuel, Math.exp(logRatio));
        EquilibriumSolver solver = EquilibriumSolver.of(Mixtures.LIBRARY, first);
        solver.setPressureTemperature(1e6, 3000);
        solver.setMixture(second);
        solver.setPressureTemperature(Math.exp(logPressure), temperature);
        double enthalpy = solver.enthalpy();
        EquilibriumSolver cold = EquilibriumSolver.of(Mixtures.LIBRARY, second);
        cold.setPressureTemperature(Math.exp(logPressure), temperature);
        double scale = cold.frozenHeatCapacity() * temperature;
        assertThat(Math.abs(enthalpy - cold.enthalpy()) / scale).isLessThan(1e-8);
        cold.forget();
        cold.setPressureEnthalpy(Math.exp(logPressure), enthalpy);
        assertThat(Math.abs(cold.enthalpy() - enthalpy) / scale).isLessThan(1e-9);
        assertThat(cold.temperature()).isBetween(temperature * (1 - 1e-6), temperature * (1 + 1e-6));
    }

    private static void assertBalanced(EquilibriumSolver solver, Reactants mixture, double enthalpy) {
        double[] moles = new double[solver.speciesSet().size()];
        solver.copyMoles(moles);
        for (String element : solver.speciesSet().elements()) {
            double wanted = mixture.composition().of(element);
            double sum = 0;
            for (int j = 0; j < moles.length; j++) {
                assertThat(moles[j]).isGreaterThanOrEqualTo(0);
                sum += moles[j] * solver.speciesSet().species().get(j).atoms().getOrDefault(element, 0);
            }
            if (wanted > 0) {
                assertThat(Math.abs(sum / wanted - 1)).as(element).isLessThan(1e-10);
            }
        }
        double scale = solver.frozenHeatCapacity() * solver.temperature();
        assertThat(Math.abs(solver.enthalpy() - enthalpy) / scale).isLessThan(1e-9);
    }
}
