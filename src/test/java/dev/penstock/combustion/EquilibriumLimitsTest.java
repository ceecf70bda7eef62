package dev.penstock.combustion;

import static dev.penstock.combustion.Mixtures.HYDROGEN;
import static dev.penstock.combustion.Mixtures.LIBRARY;
import static dev.penstock.combustion.Mixtures.METHANE;
import static dev.penstock.combustion.Mixtures.OXYGEN;
import static dev.penstock.combustion.Mixtures.WATER;
import static dev.penstock.combustion.Mixtures.of;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.property.ElementalComposition;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edges of the equilibrium model: inert gas, traces, condensed water and carbon, and what is refused. */
class EquilibriumLimitsTest {

    private static final Reactants HELIUM =
            new Reactants(ElementalComposition.ofFormula(Map.of("He", 1.0), 4.002602e-3), 0, List.of());
    private static final Reactants ARGON =
            new Reactants(ElementalComposition.ofFormula(Map.of("Ar", 1.0), 39.95e-3), 0, List.of());

    @ParameterizedTest
    @ValueSource(doubles = {1e-12, 1e-6, 1e-3, 0.2, 0.9})
    void inertGasIsCarriedAlongAndCoolsTheFlame(double share) {
        Reactants flame = of(OXYGEN, HYDROGEN, 6);
        double hot = EquilibriumSolver.of(LIBRARY, flame)
                .solveEnthalpyPressure(flame, 7e6)
                .temperature();
        Reactants diluted = flame.mixedWith(HELIUM, share).mixedWith(ARGON, share);
        GasState gas = EquilibriumSolver.of(LIBRARY, diluted).solveEnthalpyPressure(diluted, 7e6);
        assertThat(gas.temperature()).isLessThan(hot * (1 + 1e-9));
        double gasMoles = 1 / gas.molarMass();
        if (share > 1e-8) {
            assertThat(gas.moleFractions().get("He") * gasMoles)
                    .isCloseTo(diluted.composition().of("He"), withinPercentage(1e-7));
            assertThat(gas.moleFractions().get("Ar") * gasMoles)
                    .isCloseTo(diluted.composition().of("Ar"), withinPercentage(1e-7));
        }
    }

    @Test
    void inertGasAloneIsASolution() {
        GasState gas = EquilibriumSolver.of(LIBRARY, HELIUM).solveTemperaturePressure(HELIUM, 300, 1e5);
        assertThat(gas.gammaS()).isCloseTo(5.0 / 3.0, within(1e-9));
        assertThat(gas.equilibriumHeatCapacity()).isCloseTo(2.5 * 8.314462618 / 4.002602e-3, withinPercentage(1e-6));
    }

    /** Limit: a trace of another element changes nothing, and an element with no atoms at all is as good as absent. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-30, 1e-18, 1e-10})
    void traceOfAnElementChangesNothing(double moles) {
        Reactants clean = of(OXYGEN, HYDROGEN, 6);
        Map<String, Double> atoms = new TreeMap<>(clean.composition().molesPerKilogram());
        atoms.put("N", moles);
        atoms.put("C", moles);
        Reactants dirty = new Reactants(new ElementalComposition(atoms), clean.enthalpy(), clean.parts());
        GasState a = EquilibriumSolver.of(LIBRARY, clean).solveEnthalpyPressure(clean, 7e6);
        GasState b = EquilibriumSolver.of(LIBRARY, dirty).solveEnthalpyPressure(dirty, 7e6);
        assertThat(b.temperature()).isCloseTo(a.temperature(), withinPercentage(1e-6));
        assertThat(b.gammaS()).isCloseTo(a.gammaS(), withinPercentage(1e-6));
    }

    /** Stoichiometric hydrogen and oxygen when cold: one species fixes the element ratio, which is nearly singular. */
    @ParameterizedTest
    @ValueSource(doubles = {450, 600, 900, 1500})
    void stoichiometricWaterVapourIsSolvedCold(double temperature) {
        GasState gas = EquilibriumSolver.of(LIBRARY, WATER).solveTemperaturePressure(WATER, temperature, 1e5);
        assertThat(gas.moleFractions().get("H2O")).isCloseTo(1, within(1e-3));
        assertThat(gas.equilibriumHeatCapacity()).isCloseTo(gas.frozenHeatCapacity(), withinPercentage(5));
    }

    /** Published: water boils at 373.12 K at 101 325 Pa (IAPWS); the ideal-gas vapour of the model costs 0.5 K. */
    @Test
    void waterCondensesAtItsBoilingPoint() {
        EquilibriumSolver solver = EquilibriumSolver.of(LIBRARY, WATER);
        solver.setPressureEnthalpy(101325, -13.5e6); // wet steam
        assertThat(solver.temperature()).isCloseTo(373.12, within(1.0));
    }

    @Test
    void condensedSpeciesAppearAndVanishWithoutJumps() {
        Reactants mixture = of(OXYGEN, METHANE, 0.3);
        EquilibriumSolver solver = EquilibriumSolver.of(LIBRARY, mixture);
        double before = Double.NaN;
        boolean dry = false;
        boolean wet = false;
        boolean soot = false;
        for (double t = 900; t > 280; t -= 1) {
            solver.setPressureTemperature(1e5, t);
            double h = solver.enthalpy();
            if (!Double.isNaN(before)) {
                assertThat(before - h).as("at %s K", t).isBetween(0.0, 200e3);
            }
            before = h;
            double[] moles = new double[solver.speciesSet().size()];
            solver.copyMoles(moles);
            wet |= moles[solver.speciesSet().indexOf("H2O(L)")] > 0;
            dry |= moles[solver.speciesSet().indexOf("H2O(L)")] == 0;
            soot |= solver.condensedCarbon() > 0;
        }
        assertThat(dry && wet && soot).isTrue();
    }

    /** An enthalpy inside the jump where liquid water's data end is met at that temperature. */
    @Test
    void enthalpyWithinTheJumpOfWaterIsMet() {
        Reactants mixture = of(Mixtures.PEROXIDE_90, Mixtures.AMMONIA, 0.41);
        EquilibriumSolver solver = EquilibriumSolver.of(LIBRARY, mixture);
        solver.setPressureTemperature(1e8, 600);
        double low = solver.enthalpy();
        solver.setPressureTemperature(1e8, 600.0001);
        double high = solver.enthalpy();
        assertThat(high).isGreaterThan(low + 1e5);
        for (double part : new double[] {0.1, 0.5, 0.9}) {
            double wanted = low + part * (high - low);
            solver.setPressureEnthalpy(1e8, wanted);
            assertThat(solver.enthalpy()).isCloseTo(wanted, within(1.0));
            assertThat(solver.temperature()).isCloseTo(600, within(1e-3));
        }
    }

    @Test
    void temperatureOutsideTheDataIsWarnedOfAndBeyondTheModelRefused() {
        Reactants mixture = of(OXYGEN, HYDROGEN, 0.5);
        EquilibriumSolver solver = EquilibriumSolver.of(LIBRARY, mixture);
        assertThat(solver.solveTemperaturePressure(mixture, 150, 1e5).warnings())
                .extracting(Warning::message)
                .anyMatch(m -> m.contains("150"));
        assertThat(solver.solveTemperaturePressure(mixture, 7000, 1e5).warnings())
                .isNotEmpty();
        assertThatThrownBy(() -> solver.setPressureTemperature(1e5, 90)).isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> solver.setPressureTemperature(1e5, Double.NaN)).isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> solver.setPressureTemperature(0, 1000)).isInstanceOf(OutsideValidity.class);
        assertThatThrownBy(() -> solver.setPressureEnthalpy(1e5, Double.POSITIVE_INFINITY))
                .isInstanceOf(OutsideValidity.class);
    }

    @Test
    void mixtureTooColdToBurnSaysSo() {
        Reactants mixture = of(OXYGEN, HYDROGEN, 0.05);
        EquilibriumSolver solver = EquilibriumSolver.of(LIBRARY, mixture);
        assertThatThrownBy(() -> solver.setPressureEnthalpy(1e6, mixture.enthalpy()))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("hydrogen")
                .hasMessageContaining("100 K");
        // and the solver is none the worse for it
        solver.setPressureTemperature(1e6, 1000);
        assertThat(solver.temperature()).isEqualTo(1000);
    }

    @Test
    void wrongMixturesAreRefused() {
        EquilibriumSolver solver = new EquilibriumSolver(LIBRARY.speciesFor(Set.of("H", "O")));
        assertThatThrownBy(() -> solver.setPressureTemperature(1e5, 1000))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("mixture");
        assertThatThrownBy(() -> solver.setMixture(METHANE))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("C");
        Reactants light = new Reactants(new ElementalComposition(Map.of("H", 500.0)), 0, List.of());
        assertThatThrownBy(() -> solver.setMixture(light))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("0.5 %");
        assertThatThrownBy(() -> EquilibriumSolver.of(LIBRARY, WATER).setPressureTemperature(1e5, 300))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("H2O(L)");
    }
}
