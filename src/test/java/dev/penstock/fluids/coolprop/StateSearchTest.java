package dev.penstock.fluids.coolprop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.ExpansionState;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidSamples;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.fluids.state.Phase;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The searches for a state by pressure and enthalpy or entropy: effort, hard corners, and recovery from failure. */
@ParameterizedClass
@MethodSource("dev.penstock.fluids.coolprop.CoolPropWay#here")
class StateSearchTest {

    @Parameter
    CoolPropWay way;

    @Test
    void aMarchAlongAChannelTakesThreeEvaluationsAStation() {
        Fluid methane = way.fluids().propellant("methane").fluid();
        double low = methane.atPressureTemperature(12e6, 115).enthalpy();
        double high = methane.atPressureTemperature(10e6, 500).enthalpy();
        int stations = 200;
        try (CoolPropCursor cursor = (CoolPropCursor) methane.cursor()) {
            cursor.setPressureTemperature(12e6, 115);
            for (int i = 0; i < stations; i++) {
                double share = i / (stations - 1.0);
                cursor.setPressureEnthalpy(12e6 - 2e6 * share, low + (high - low) * share);
            }
            assertThat(cursor.temperature()).isCloseTo(500, within(1e-6));
            assertThat(cursor.warmEvaluations()).isLessThan(stations * 3 + 10);
        }
    }

    @ParameterizedTest
    @CsvSource({"methane, 4595320.8, 148176.63", "methane, 4598000, 200000", "nitrous-oxide, 7243183.3, 254306.36"})
    void justBelowTheCriticalPressureAStateIsFoundWhereTheLibraryGivesUp(String id, double pressure, double enthalpy) {
        Fluid fluid = way.fluids().propellant(id).fluid();
        FluidState state = fluid.atPressureEnthalpy(pressure, enthalpy);
        assertThat(fluid.atPressureTemperature(pressure, state.temperature()).enthalpy())
                .isCloseTo(enthalpy, within(1.0));
    }

    /** Identity: pressure and enthalpy of a state that was found are those asked for, to nearly the last digit. */
    @ParameterizedTest
    @CsvSource({"methane, 1.7e6", "methane, 4.7e6", "hydrogen, 1.4e6", "hydrogen, 6e6", "oxygen, 12e6"})
    void aStateByEnthalpyOrEntropyHasNoNoiseOfTheSearch(String id, double pressure) {
        Fluid fluid = way.fluids().propellant(id).fluid();
        double low = fluid.atPressureTemperature(pressure, 1.3 * fluid.range().minimumTemperature())
                .enthalpy();
        double high = fluid.atPressureTemperature(pressure, 600).enthalpy();
        for (int i = 0; i <= 40; i++) {
            double enthalpy = low + (high - low) * i / 40;
            FluidState state = fluid.atPressureEnthalpy(pressure, enthalpy);
            if (state.phase() != Phase.TWO_PHASE) {
                assertThat(state.enthalpy()).isCloseTo(enthalpy, within(1e-10 * (high - low)));
                FluidState back = fluid.atPressureEntropy(pressure, state.entropy());
                assertThat(back.enthalpy()).isCloseTo(enthalpy, within(1e-9 * (high - low)));
                assertThat(fluid.enthalpyAtPressureEntropy(pressure, state.entropy()))
                        .isEqualTo(back.enthalpy());
            }
        }
    }

    /** Identity: a search from states found before, however near or far they are, finds what one without them finds. */
    @ParameterizedTest
    @CsvSource({"methane, 1.7e6", "methane, 4.7e6", "hydrogen, 1.4e6", "hydrogen, 6e6", "oxygen, 12e6"})
    void knownStatesMoveNoAnswer(String id, double pressure) {
        Fluid fluid = way.fluids().propellant(id).fluid();
        double cold = 1.3 * fluid.range().minimumTemperature();
        double low = fluid.atPressureTemperature(pressure, cold).enthalpy();
        double high = fluid.atPressureTemperature(pressure, 600).enthalpy();
        KnownStates known = new KnownStates();
        Random random = new Random(3);
        for (double spread : new double[] {1, 1e-2, 1e-4, 1e-7}) {
            for (int i = 0; i < 40; i++) {
                double p = pressure * (1 + 0.3 * spread * random.nextDouble());
                double h = low + (high - low) * (0.3 + 0.5 * spread * random.nextDouble());
                FluidState state = fluid.atPressureEnthalpy(p, h, known);
                FluidState alone = fluid.atPressureEnthalpy(p, h);
                assertThat(state.phase()).isEqualTo(alone.phase());
                assertThat(state.density()).isCloseTo(alone.density(), within(1e-10 * alone.density()));
                assertThat(state.temperature()).isCloseTo(alone.temperature(), within(1e-10 * alone.temperature()));
                double below = 0.6 * p;
                alike(
                        fluid.expansionAtPressureEntropy(below, alone.entropy(), known),
                        fluid.atPressureEntropy(below, alone.entropy()),
                        high - low);
                alike(fluid.expansionAtPressureEnthalpy(p, h, known), alone, high - low);
                double behind = 1.2 * p;
                assertThat(fluid.enthalpyAtPressureEntropy(behind, alone.entropy(), known))
                        .isCloseTo(
                                fluid.enthalpyAtPressureEntropy(behind, alone.entropy()), within(1e-10 * (high - low)));
            }
        }
        assertThat(known.size()).isPositive();
    }

    private static void alike(ExpansionState part, FluidState whole, double enthalpies) {
        assertThat(part.twoPhase()).isEqualTo(whole.phase() == Phase.TWO_PHASE);
        assertThat(part.pressure()).isEqualTo(whole.pressure());
        assertThat(part.temperature()).isCloseTo(whole.temperature(), within(1e-10 * whole.temperature()));
        assertThat(part.density()).isCloseTo(whole.density(), within(1e-10 * whole.density()));
        assertThat(part.enthalpy()).isCloseTo(whole.enthalpy(), within(1e-10 * enthalpies));
        assertThat(part.entropy()).isCloseTo(whole.entropy(), within(1e-10 * Math.abs(whole.entropy())));
        assertThat(part.soundSpeed()).isCloseTo(whole.soundSpeed(), within(1e-8 * whole.soundSpeed()));
        assertThat(part.isobaricHeatCapacity())
                .isCloseTo(whole.isobaricHeatCapacity(), within(1e-7 * whole.isobaricHeatCapacity()));
    }

    /** A step of a search by density between the phases has CoolProp solve for saturation: not done where the state before lay there. */
    @Test
    void fromOneStateBetweenThePhasesToTheNextNothingIsSoughtByDensity() {
        Fluid propane = way.fluids().propellant("propane").fluid();
        double pressure = 1.2e6;
        double wet = propane.saturation(new double[] {pressure}).orElseThrow().vapourEnthalpy()[0] - 1e5;
        KnownStates known = new KnownStates();
        try (CoolPropCursor cursor = (CoolPropCursor) propane.cursor()) {
            cursor.atPressureEnthalpy(pressure, wet, known);
            int once = cursor.warmEvaluations();
            for (int i = 1; i <= 10; i++) {
                double there = pressure * (1 + 0.01 * i);
                FluidState state = cursor.atPressureEnthalpy(there, wet, known);
                assertThat(state.phase()).isEqualTo(Phase.TWO_PHASE);
                assertThat(state.density())
                        .isEqualTo(propane.atPressureEnthalpy(there, wet).density());
            }
            assertThat(cursor.warmEvaluations()).isEqualTo(once);
            FluidState dry = cursor.atPressureEnthalpy(pressure, wet + 2e5, known);
            assertThat(dry.phase()).isNotEqualTo(Phase.TWO_PHASE);
            assertThat(cursor.warmEvaluations()).isGreaterThan(once);
            assertThat(known.sought()).isEqualTo(12);
            assertThat(known.saturations()).isEqualTo(11);
        }
    }

    /** Identity: by pressure and temperature too, a state found from the last one is that found from nothing, in two evaluations. */
    @Test
    void aHotStateIsFoundFromTheLastOne() {
        Fluid propane = way.fluids().propellant("propane").fluid();
        double hot = 0.9995 * propane.range().maximumTemperature();
        try (CoolPropCursor cursor = (CoolPropCursor) propane.cursor()) {
            cursor.setPressureTemperature(3e6, hot);
            int steps = 20;
            for (int i = 1; i <= steps; i++) {
                double pressure = 3e6 * (1 - 0.01 * i);
                cursor.setPressureTemperature(pressure, hot - i);
                FluidState alone = propane.atPressureTemperature(pressure, hot - i);
                assertThat(cursor.density()).isCloseTo(alone.density(), withinPercentage(1e-8));
                assertThat(cursor.enthalpy()).isCloseTo(alone.enthalpy(), withinPercentage(1e-8));
            }
            assertThat(cursor.warmEvaluations()).isBetween(steps, 3 * steps);
        }
    }

    /** Identity: a list across liquid, mixture and gas holds what single questions find, and nothing between the phases. */
    @ParameterizedTest
    @CsvSource({
        "methane, 1e6, 6e6",
        "hydrogen, 5e5, 3e6",
        "propane, 5e5, 5e6",
        "nitrous-oxide, 3e6, 9e6",
        "rp-1, 1e6, 9e6"
    })
    void manyStatesAtOnceAreThoseFoundOneByOne(String id, double lowest, double highest) {
        Fluid fluid = way.fluids().propellant(id).fluid();
        double low = fluid.atPressureTemperature(highest, 1.2 * fluid.range().minimumTemperature())
                .enthalpy();
        double high = fluid.atPressureTemperature(lowest, 0.9 * fluid.range().maximumTemperature())
                .enthalpy();
        int count = 1200;
        double[] pressures = new double[count];
        double[] enthalpies = new double[count];
        for (int i = 0; i < count; i++) {
            pressures[i] = lowest + (highest - lowest) * (i / 120) / 9;
            enthalpies[i] = low + (high - low) * (i % 120) / 119;
        }
        double[] none = new double[count];
        Arrays.fill(none, Double.NaN);
        int held = 0;
        int single = 0;
        try (FluidCursor cursor = fluid.cursor()) {
            FluidSamples samples = cursor.sample(pressures, enthalpies, none, none);
            for (int i = 0; i < count; i++) {
                FluidState state = fluid.atPressureEnthalpy(pressures[i], enthalpies[i]);
                single += state.phase() == Phase.TWO_PHASE ? 0 : 1;
                if (samples.holds(i)) {
                    held++;
                    assertThat(samples.phase(i)).isEqualTo(state.phase());
                    near(samples.value(FluidSamples.Property.TEMPERATURE, i), state.temperature());
                    near(samples.value(FluidSamples.Property.DENSITY, i), state.density());
                    near(samples.value(FluidSamples.Property.SOUND_SPEED, i), state.soundSpeed());
                    near(samples.value(FluidSamples.Property.VISCOSITY, i), state.viscosity());
                    near(samples.value(FluidSamples.Property.CONDUCTIVITY, i), state.conductivity());
                }
            }
        }
        assertThat(held).isGreaterThan(count / 2).isGreaterThan(single * 99 / 100);
    }

    private static void near(double got, double expected) {
        assertThat(got).isCloseTo(expected, within(1e-8 * expected));
    }

    @Test
    void aFailedSearchDoesNotFalsifyTheNextState() {
        Fluid nitrogen = way.fluids().propellant("nitrogen").fluid();
        double gas = nitrogen.atPressureTemperature(1.0e6, 112).density();
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            double pressure = 1e5 * Math.pow(600, random.nextDouble());
            double beyond = -1e6 - 1e6 * random.nextDouble();
            assertThatThrownBy(() -> nitrogen.atPressureEnthalpy(pressure, beyond))
                    .isInstanceOf(PropertyFailure.class)
                    .hasMessageContaining("nitrogen");
            assertThat(nitrogen.atPressureTemperature(1.0e6, 112).density()).isCloseTo(gas, within(1e-9 * gas));
        }
    }

    @Test
    void bracketedAndDirectSearchAgree() {
        CoolPropFluid oxygen = (CoolPropFluid) way.fluids().propellant("oxygen").fluid();
        CoolPropHandle handle = way.library().open("Oxygen", "oxygen");
        BracketedFlash bracketed = new BracketedFlash(
                handle, oxygen.range(), oxygen.criticalPressure().orElseThrow());
        for (double temperature : new double[] {70, 120, 160, 300, 900}) {
            for (double pressure : new double[] {0.2e6, 3e6, 20e6}) {
                double entropy =
                        oxygen.atPressureTemperature(pressure, temperature).entropy();
                bracketed.move(pressure, CoolPropOutput.ENTROPY, entropy);
                assertThat(handle.output(CoolPropOutput.TEMPERATURE))
                        .isCloseTo(temperature, within(1e-6 * temperature));
            }
        }
        double between = oxygen.saturatedLiquid(100).enthalpy() + 1e5;
        bracketed.move(oxygen.vapourPressure(100), CoolPropOutput.ENTHALPY, between);
        assertThat(handle.output(CoolPropOutput.ENTHALPY)).isCloseTo(between, within(1.0));
        assertThat(CoolPropPhases.of(handle)).isEqualTo(Phase.TWO_PHASE);
    }

    @Test
    void aCursorCrossesTheTwoPhaseRegionAndBack() {
        Fluid propane = way.fluids().propellant("propane").fluid();
        double pressure = 1e6;
        try (FluidCursor cursor = propane.cursor()) {
            for (double temperature : new double[] {250, 450, 250}) {
                double enthalpy =
                        propane.atPressureTemperature(pressure, temperature).enthalpy();
                cursor.setPressureEnthalpy(pressure, enthalpy);
                assertThat(cursor.temperature()).isCloseTo(temperature, within(1e-6 * temperature));
            }
            double liquid = propane.atPressureTemperature(pressure, 250).enthalpy();
            double gas = propane.atPressureTemperature(pressure, 450).enthalpy();
            cursor.setPressureEnthalpy(pressure, (liquid + gas) / 2);
            assertThat(cursor.phase()).isEqualTo(Phase.TWO_PHASE);
            FluidState saturated = propane.saturatedLiquid(cursor.temperature());
            assertThat(cursor.isobaricHeatCapacity())
                    .isCloseTo(saturated.isobaricHeatCapacity(), within(1e-4 * saturated.isobaricHeatCapacity()));
            assertThat(cursor.viscosity()).isCloseTo(saturated.viscosity(), within(1e-4 * saturated.viscosity()));
        }
    }
}
