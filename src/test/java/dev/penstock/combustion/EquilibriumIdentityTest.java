package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.species.Species;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.combustion.species.ThermoInterval;
import dev.penstock.quantities.Constants;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Identities of thermodynamics and of equilibrium, at every state of the reference cases. */
class EquilibriumIdentityTest {

    /** Relative step of the central differences; their error is the square of it plus round-off over it. */
    private static final double STEP = 1e-4;

    /** Slopes change within a step where traces appear or the fits join; hence wider than the error of differences. */
    private static final double SLOPE_PERCENT = 2e-3;

    static List<ReferenceCase> cases() {
        return ReferenceCase.read("cantera_equilibrium.csv");
    }

    private static EquilibriumSolver solved(ReferenceCase c) {
        EquilibriumSolver solver = EquilibriumSolver.of(Mixtures.LIBRARY, c.reactants());
        solver.setPressureEnthalpy(c.pressure(), c.reactants().enthalpy());
        return solver;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void elementsAreConserved(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        double[] moles = new double[solver.speciesSet().size()];
        solver.copyMoles(moles);
        for (String element : solver.speciesSet().elements()) {
            double sum = 0;
            for (int j = 0; j < moles.length; j++) {
                Map<String, Integer> atoms =
                        solver.speciesSet().species().get(j).atoms();
                sum += moles[j] * atoms.getOrDefault(element, 0);
            }
            assertThat(sum / c.reactants().composition().of(element))
                    .as(element)
                    .isCloseTo(1, within(1e-10));
        }
    }

    /**
     * The definition of equilibrium: one potential per element explains the chemical potential of every species, and no
     * absent condensed species would lower the Gibbs energy. Tolerance: the fits' intervals are joined (3e-6 at most).
     */
    @ParameterizedTest
    @MethodSource("cases")
    void onePotentialPerElementExplainsEverySpecies(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        SpeciesSet set = solver.speciesSet();
        double[] moles = new double[set.size()];
        solver.copyMoles(moles);
        double gas = 1 / solver.molarMass();
        for (int j = 0; j < set.size(); j++) {
            Species species = set.species().get(j);
            double t = solver.temperature();
            if (t > species.maximumTemperature() || t < species.minimumTemperature()) {
                continue;
            }
            ThermoInterval fit = species.intervals().stream()
                    .filter(i -> t <= i.high())
                    .findFirst()
                    .orElseThrow();
            double potential = fit.enthalpy(t) - fit.entropy(t);
            double explained = 0;
            for (int k = 0; k < set.elements().size(); k++) {
                explained += solver.elementPotential(k)
                        * species.atoms().getOrDefault(set.elements().get(k), 0);
            }
            if (!species.condensed() && moles[j] > 1e-250) {
                potential += Math.log(moles[j] / gas * c.pressure() / Constants.STANDARD_STATE_PRESSURE);
                assertThat(explained).as(species.name()).isCloseTo(potential, within(1e-5));
            } else if (moles[j] > 0) {
                assertThat(explained).as(species.name()).isCloseTo(potential, within(1e-5));
            } else if (species.condensed()) {
                assertThat(explained).as(species.name()).isLessThan(potential + 1e-5);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void heatCapacityIsTheSlopeOfEnthalpy(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        double t = solver.temperature();
        double cp = solver.equilibriumHeatCapacity();
        double slope = solver.volumeTemperatureSlope();
        solver.setPressureTemperature(c.pressure(), t * (1 + STEP));
        double high = solver.enthalpy();
        double volumeHigh = 1 / solver.density();
        solver.setPressureTemperature(c.pressure(), t * (1 - STEP));
        double low = solver.enthalpy();
        double volumeLow = 1 / solver.density();
        assertThat((high - low) / (2 * STEP * t)).isCloseTo(cp, withinPercentage(SLOPE_PERCENT));
        double logStep = Math.log((1 + STEP) / (1 - STEP));
        assertThat(Math.log(volumeHigh / volumeLow) / logStep).isCloseTo(slope, withinPercentage(SLOPE_PERCENT));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isentropicExponentIsTheSlopeOfTheIsentrope(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        double exponent = solver.isentropicExponent();
        double sound = solver.soundSpeed();
        double density = solver.density();
        double s = solver.entropy();
        solver.setPressureEntropy(c.pressure() * (1 + STEP), s);
        double densityHigh = solver.density();
        double enthalpyHigh = solver.enthalpy();
        solver.setPressureEntropy(c.pressure() * (1 - STEP), s);
        double densityLow = solver.density();
        double enthalpyLow = solver.enthalpy();
        double slope = Math.log((1 + STEP) / (1 - STEP)) / Math.log(densityHigh / densityLow);
        assertThat(slope).isCloseTo(exponent, withinPercentage(SLOPE_PERCENT));
        double dp = 2 * STEP * c.pressure();
        assertThat(Math.sqrt(dp / (densityHigh - densityLow))).isCloseTo(sound, withinPercentage(SLOPE_PERCENT));
        // T ds = dh - v dp along the isentrope
        assertThat((enthalpyHigh - enthalpyLow) / dp).isCloseTo(1 / density, withinPercentage(1e-3));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void volumeSlopeWithPressureIsThatOfTheIsotherm(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        double slope = solver.volumePressureSlope();
        double t = solver.temperature();
        solver.setPressureTemperature(c.pressure() * (1 + STEP), t);
        double high = solver.density();
        solver.setPressureTemperature(c.pressure() * (1 - STEP), t);
        double low = solver.density();
        double differences = -Math.log(high / low) / Math.log((1 + STEP) / (1 - STEP));
        assertThat(differences).isCloseTo(slope, withinPercentage(SLOPE_PERCENT));
    }

    /** gamma_s, cp and the volume slopes are computed from different linear systems, yet are tied by thermodynamics. */
    @ParameterizedTest
    @MethodSource("cases")
    void slopesAreConsistentWithEachOther(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        double slopeT = solver.volumeTemperatureSlope();
        double nR = Constants.MOLAR_GAS_CONSTANT / solver.molarMass();
        double tied = -1 / (solver.volumePressureSlope() + slopeT * slopeT * nR / solver.equilibriumHeatCapacity());
        assertThat(solver.isentropicExponent()).isCloseTo(tied, withinPercentage(1e-7));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void sameStateIsFoundWhateverIsAssigned(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        double t = solver.temperature();
        double s = solver.entropy();
        solver.forget();
        solver.setPressureEntropy(c.pressure(), s);
        assertThat(solver.temperature()).isCloseTo(t, withinPercentage(1e-8));
        solver.forget();
        solver.setPressureTemperature(c.pressure(), t);
        assertThat(solver.entropy()).isCloseTo(s, withinPercentage(1e-8));
        assertThat(solver.enthalpy()).isCloseTo(c.reactants().enthalpy(), within(1e-7 * 1e6));
    }

    /** Effort: what a cold start, a repeated state and a neighbouring state may cost. */
    @ParameterizedTest
    @MethodSource("cases")
    void solutionTakesFewSteps(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        assertThat(solver.iterations()).as("cold").isLessThanOrEqualTo(50);
        double s = solver.entropy();
        solver.setPressureEnthalpy(c.pressure(), c.reactants().enthalpy());
        assertThat(solver.iterations()).as("again").isLessThanOrEqualTo(1);
        solver.setPressureEntropy(c.pressure() * 0.8, s);
        assertThat(solver.iterations()).as("next station").isLessThanOrEqualTo(20);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void frozenGasStartsFromTheEquilibriumState(ReferenceCase c) {
        EquilibriumSolver solver = solved(c);
        FrozenGas frozen = solver.freeze();
        assertThat(frozen.enthalpy()).isCloseTo(solver.enthalpy(), within(1e-9 * 1e7));
        assertThat(frozen.entropy()).isCloseTo(solver.entropy(), withinPercentage(1e-9));
        assertThat(frozen.frozenHeatCapacity()).isCloseTo(solver.frozenHeatCapacity(), withinPercentage(1e-9));
        double s = frozen.entropy();
        double t = frozen.temperature();
        frozen.setPressureEntropy(c.pressure() * (1 + STEP), s);
        double high = frozen.density();
        frozen.setPressureEntropy(c.pressure() * (1 - STEP), s);
        double slope = Math.log((1 + STEP) / (1 - STEP)) / Math.log(high / frozen.density());
        frozen.setPressureTemperature(c.pressure(), t);
        assertThat(frozen.isentropicExponent()).isCloseTo(slope, withinPercentage(SLOPE_PERCENT));
    }
}
