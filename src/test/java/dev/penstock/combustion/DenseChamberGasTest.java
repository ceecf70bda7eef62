package dev.penstock.combustion;

import static dev.penstock.combustion.Mixtures.HYDROGEN;
import static dev.penstock.combustion.Mixtures.KEROSENE;
import static dev.penstock.combustion.Mixtures.LIBRARY;
import static dev.penstock.combustion.Mixtures.METHANE;
import static dev.penstock.combustion.Mixtures.MMH;
import static dev.penstock.combustion.Mixtures.OXYGEN;
import static dev.penstock.combustion.Mixtures.TETROXIDE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.FrozenGas;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasCursor;
import dev.penstock.combustion.species.Collision;
import dev.penstock.combustion.species.SecondVirial;
import dev.penstock.combustion.species.SpeciesSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Chamber gas that takes up room by its second virial coefficients. */
class DenseChamberGasTest {

    private static final double CUBIC_CENTIMETRE = 1e-6;
    private static final double STEP = 1e-4;

    private static Reactants mixture(String pair) {
        return switch (pair) {
            case "methane" -> Mixtures.of(OXYGEN, METHANE, 3.4);
            case "hydrogen" -> Mixtures.of(OXYGEN, HYDROGEN, 6);
            case "kerosene" -> Mixtures.of(OXYGEN, KEROSENE, 2.6);
            case "sooty" -> Mixtures.of(OXYGEN, KEROSENE, 0.9);
            default -> Mixtures.of(TETROXIDE, MMH, 2.0);
        };
    }

    private static FrozenGas frozen(String text) {
        return Mixtures.gas(text, SpeciesSet::dense);
    }

    /**
     * Independent library: second virial coefficients (cm³/mol) of the reference equations of state in CoolProp 8.0.0, beyond the
     * temperatures that they were fitted to.
     */
    @ParameterizedTest
    @CsvSource({
        "H2, 14.5, 12.8, 3",
        "N2, 31.8, 31.2, 1",
        "O2, 26.4, 28.0, 1",
        "CO, 32.5, 31.5, 1",
        "H2O, 6.5, 11.6, 3",
        "CO2, 34.3, 39.8, 7",
        "Ar, 24.7, 25.2, 1.5"
    })
    void coefficientsAgreeWithReferenceEquations(String species, double at2000, double at3500, double tolerance) {
        SecondVirial virial = LIBRARY.named(species).secondVirial().orElseThrow();
        assertThat(virial.at(2000) / CUBIC_CENTIMETRE).isCloseTo(at2000, within(tolerance));
        assertThat(virial.at(3500) / CUBIC_CENTIMETRE).isCloseTo(at3500, within(tolerance));
    }

    /** Published: B* of the Lennard-Jones potential [hirschfelder-1954], from memory, and its Boyle temperature of 3.418. */
    @ParameterizedTest
    @CsvSource({"1, -2.5381", "2, -0.6276", "3.418, 0.0000", "5, 0.2433", "10, 0.4609", "30, 0.5269", "100, 0.4641"})
    void lennardJonesCoefficientIsThatOfTheTable(double reduced, double published) {
        Collision collision = new Collision(Collision.Shape.ATOM, 100, 3e-10, 0, 1);
        double room = 2.0 / 3 * Math.PI * 6.02214076e23 * 2.7e-29;
        assertThat(SecondVirial.lennardJones(collision, 100 * reduced) / room).isCloseTo(published, within(2e-4));
    }

    /** Published: gas of gun propellants has a covolume of about 1 cm³/g (interior ballistics, from memory). */
    @Test
    void propellantGasHasTheCovolumeOfInteriorBallistics() {
        FrozenGas gas = frozen("CO 0.42 CO2 0.1 H2 0.1 H2O 0.25 N2 0.13");
        gas.setPressureTemperature(50e6, 3000);
        double ideal = 8.314462618 * 3000 / (50e6 * gas.molarMass());
        assertThat((1 / gas.density() - ideal) / 1e-3).isCloseTo(1.0, within(0.1));
    }

    /** Independent library: CoolProp 8.0.0, its multi-fluid mixtures: density (mol/m³), isentropic drop (J/mol), temperature behind. */
    @ParameterizedTest
    @CsvSource({
        "H2O 0.6 H2 0.4, 2000, 20e6, 11e6, 1185.333, 9507.27, 1785.23, 1347.71",
        "H2O 0.6 H2 0.4, 1500, 20e6, 11e6, 1577.343, 7105.16, 1325.86, 1182.32",
        "H2O 0.35 CO 0.35 CO2 0.2 H2 0.1, 2000, 30e6, 17e6, 1734.108, 9264.10, 1803.48, 935.403",
        "N2 0.35 H2O 0.45 CO2 0.2, 2000, 20e6, 11e6, 1174.359, 9617.20, 1800.09, 889.516"
    })
    void mixturesAgreeWithAnIndependentModel(
            String text,
            double temperature,
            double pressure,
            double exit,
            double density,
            double drop,
            double cold,
            double sound) {
        FrozenGas gas = frozen(text);
        gas.setPressureTemperature(pressure, temperature);
        double ideal = pressure / (8.314462618 * temperature);
        double molarMass = gas.molarMass();
        assertThat(gas.density() / molarMass).isCloseTo(density, withinPercentage(0.5));
        assertThat(Math.abs(gas.density() / molarMass - density)).isLessThan(0.35 * Math.abs(ideal - density));
        assertThat(gas.soundSpeed()).isCloseTo(sound, withinPercentage(0.5));
        double hot = gas.enthalpy();
        gas.setPressureEntropy(exit, gas.entropy());
        assertThat((hot - gas.enthalpy()) * molarMass).isCloseTo(drop, withinPercentage(0.5));
        assertThat(gas.temperature()).isCloseTo(cold, within(1.0));
    }

    /** Identity: (∂h/∂p)_s = v, a² = (∂p/∂ρ)_s, cp = (∂h/∂T)_p, slopes of the volume, all by differences; composition shifts. */
    @ParameterizedTest
    @ValueSource(strings = {"methane", "hydrogen", "kerosene", "sooty", "mmh"})
    void shiftingGasKeepsTheIdentities(String pair) {
        Reactants reactants = mixture(pair);
        EquilibriumSolver solver = EquilibriumSolver.dense(LIBRARY, reactants);
        double p = 40e6;
        solver.setPressureEnthalpy(p, reactants.enthalpy());
        double t = solver.temperature();
        double cp = solver.equilibriumHeatCapacity();
        double slopeT = solver.volumeTemperatureSlope();
        double slopeP = solver.volumePressureSlope();
        assertIdentities(solver);
        solver.setPressureTemperature(p, t * (1 + STEP));
        double h = solver.enthalpy();
        double volume = 1 / solver.density();
        solver.setPressureTemperature(p, t * (1 - STEP));
        double perLog = Math.log((1 + STEP) / (1 - STEP));
        assertThat((h - solver.enthalpy()) / (2 * STEP * t)).isCloseTo(cp, withinPercentage(1e-3));
        assertThat(Math.log(volume * solver.density()) / perLog).isCloseTo(slopeT, withinPercentage(1e-3));
        solver.setPressureTemperature(p * (1 + STEP), t);
        volume = 1 / solver.density();
        solver.setPressureTemperature(p * (1 - STEP), t);
        assertThat(Math.log(volume * solver.density()) / perLog).isCloseTo(slopeP, withinPercentage(1e-3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"methane", "hydrogen", "kerosene", "sooty", "mmh"})
    void frozenGasKeepsTheIdentitiesAndStartsFromTheSameState(String pair) {
        Reactants reactants = mixture(pair);
        EquilibriumSolver solver = EquilibriumSolver.dense(LIBRARY, reactants);
        solver.setPressureEnthalpy(40e6, reactants.enthalpy());
        FrozenGas gas = solver.freeze();
        assertThat(gas.enthalpy()).isCloseTo(solver.enthalpy(), within(1e-3));
        assertThat(gas.entropy()).isCloseTo(solver.entropy(), within(1e-6));
        assertThat(gas.density()).isCloseTo(solver.density(), withinPercentage(1e-9));
        assertThat(gas.frozenHeatCapacity()).isCloseTo(solver.frozenHeatCapacity(), withinPercentage(1e-9));
        assertIdentities(gas);
    }

    private static void assertIdentities(GasCursor gas) {
        double p = gas.pressure();
        double s = gas.entropy();
        double density = gas.density();
        double sound = gas.soundSpeed();
        double exponent = gas.isentropicExponent();
        gas.setPressureEntropy(p * (1 + STEP), s);
        double h = gas.enthalpy();
        double dense = gas.density();
        gas.setPressureEntropy(p * (1 - STEP), s);
        assertThat((h - gas.enthalpy()) / (2 * STEP * p)).isCloseTo(1 / density, withinPercentage(1e-4));
        assertThat(2 * STEP * p / (dense - gas.density())).isCloseTo(sound * sound, withinPercentage(1e-3));
        assertThat(Math.log((1 + STEP) / (1 - STEP)) / Math.log(dense / gas.density()))
                .isCloseTo(exponent, withinPercentage(1e-3));
    }

    /** Limit: where the gas is thin it is the ideal one, and at 1 MPa it has 0.1 % more volume. */
    @ParameterizedTest
    @ValueSource(strings = {"methane", "hydrogen", "kerosene", "mmh"})
    void thinGasIsIdeal(String pair) {
        Reactants reactants = mixture(pair);
        EquilibriumSolver dense = EquilibriumSolver.dense(LIBRARY, reactants);
        EquilibriumSolver ideal = EquilibriumSolver.of(LIBRARY, reactants);
        dense.setPressureEnthalpy(1e3, reactants.enthalpy());
        ideal.setPressureEnthalpy(1e3, reactants.enthalpy());
        assertThat(dense.temperature()).isCloseTo(ideal.temperature(), withinPercentage(1e-4));
        assertThat(dense.density()).isCloseTo(ideal.density(), withinPercentage(1e-3));
        dense.setPressureEnthalpy(1e6, reactants.enthalpy());
        ideal.setPressureEnthalpy(1e6, reactants.enthalpy());
        assertThat(ideal.density() / dense.density() - 1).isBetween(2e-4, 1.5e-3);
    }
}
