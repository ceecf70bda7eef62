package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.fluids.coolprop.CoolPropWay;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidState;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every fluid must keep, whatever its model: identities between its properties, and round trips between the pairs
 * of inputs. Derivatives are central differences, whose own error sets the tolerances.
 */
@ParameterizedClass
@MethodSource("dev.penstock.fluids.coolprop.CoolPropWay#here")
class FluidContractTest {

    @Parameter
    CoolPropWay way;

    /** A fluid at one liquid or dense state. */
    record Case(String id, double pressure, double temperature) {}

    private Fluid fluid(Case at) {
        return way.fluids().propellant(at.id).fluid();
    }

    private FluidState state(Case at) {
        return fluid(at).atPressureTemperature(at.pressure, at.temperature);
    }

    static Stream<Case> states() {
        List<Case> cases = new ArrayList<>();
        FluidLibrary files = FluidLibrary.open(CoolPropWay.HOME);
        for (String id : files.ids()) {
            Propellant propellant = files.propellant(id);
            double t = propellant.storageTemperature();
            double p = propellant.storagePressure();
            cases.add(new Case(id, p, t));
            cases.add(new Case(id, p + 5e6, t));
            cases.add(new Case(id, 30e6, t * 1.15));
        }
        return cases.stream();
    }

    @ParameterizedTest
    @MethodSource("states")
    void heatCapacityIsTheSlopeOfEnthalpy(Case at) {
        double step = 1e-4 * at.temperature;
        double slope = (warmed(at, step).enthalpy() - warmed(at, -step).enthalpy()) / (2 * step);
        assertThat(slope / state(at).isobaricHeatCapacity()).isCloseTo(1, within(2e-5));
    }

    @ParameterizedTest
    @MethodSource("states")
    void enthalpyEntropyAndVolumeObeyTheGibbsRelation(Case at) {
        FluidState state = state(at);
        double step = 1e-4 * at.temperature;
        double byTemperature = (warmed(at, step).enthalpy() - warmed(at, -step).enthalpy())
                / (warmed(at, step).entropy() - warmed(at, -step).entropy());
        assertThat(byTemperature / at.temperature).isCloseTo(1, within(1e-6));
        double push = 1e-3 * at.pressure;
        FluidState above = fluid(at).atPressureTemperature(at.pressure + push, at.temperature);
        FluidState below = fluid(at).atPressureTemperature(at.pressure - push, at.temperature);
        double volume = (above.enthalpy() - below.enthalpy()) - at.temperature * (above.entropy() - below.entropy());
        assertThat(volume / (2 * push) * state.density()).isCloseTo(1, within(1e-5));
    }

    @ParameterizedTest
    @MethodSource("states")
    void entropyFallsWithPressureAsVolumeGrowsWithTemperature(Case at) {
        double push = 1e-3 * at.pressure;
        double step = 1e-3 * at.temperature;
        double entropySlope = (fluid(at)
                                .atPressureTemperature(at.pressure + push, at.temperature)
                                .entropy()
                        - fluid(at)
                                .atPressureTemperature(at.pressure - push, at.temperature)
                                .entropy())
                / (2 * push);
        double volumeSlope =
                (1 / warmed(at, step).density() - 1 / warmed(at, -step).density()) / (2 * step);
        assertThat(-entropySlope / volumeSlope).isCloseTo(1, within(1e-3));
    }

    @ParameterizedTest
    @MethodSource("states")
    void soundSpeedIsTheIsentropicSlopeOfPressure(Case at) {
        FluidState state = state(at);
        double push = 1e-3 * at.pressure;
        double above =
                fluid(at).atPressureEntropy(at.pressure + push, state.entropy()).density();
        double below =
                fluid(at).atPressureEntropy(at.pressure - push, state.entropy()).density();
        double squared = 2 * push / (above - below);
        assertThat(Math.sqrt(squared) / state.soundSpeed()).isCloseTo(1, within(2e-4));
    }

    @ParameterizedTest
    @MethodSource("states")
    void heatCapacitiesDifferByExpansionAndCompressibility(Case at) {
        FluidState state = state(at);
        double push = 1e-3 * at.pressure;
        double step = 1e-3 * at.temperature;
        double v = 1 / state.density();
        double byT = (1 / warmed(at, step).density() - 1 / warmed(at, -step).density()) / (2 * step);
        double byP = (1
                                / fluid(at)
                                        .atPressureTemperature(at.pressure + push, at.temperature)
                                        .density()
                        - 1
                                / fluid(at)
                                        .atPressureTemperature(at.pressure - push, at.temperature)
                                        .density())
                / (2 * push);
        double difference = -at.temperature * byT * byT / byP;
        assertThat(state.isobaricHeatCapacity() - state.isochoricHeatCapacity())
                .isCloseTo(difference, within(2e-3 * state.isobaricHeatCapacity()));
        assertThat(v).isPositive();
    }

    @ParameterizedTest
    @MethodSource("states")
    void enthalpyAndEntropyLeadBackToTheTemperature(Case at) {
        FluidState state = state(at);
        FluidState byEnthalpy = fluid(at).atPressureEnthalpy(at.pressure, state.enthalpy());
        FluidState byEntropy = fluid(at).atPressureEntropy(at.pressure, state.entropy());
        assertThat(byEnthalpy.temperature()).isCloseTo(at.temperature, within(1e-6 * at.temperature));
        assertThat(byEntropy.temperature()).isCloseTo(at.temperature, within(1e-6 * at.temperature));
        assertThat(byEnthalpy.density()).isCloseTo(state.density(), within(1e-6 * state.density()));
    }

    @ParameterizedTest
    @MethodSource("states")
    void aCursorGivesTheSameAsTheFluid(Case at) {
        FluidState state = state(at);
        try (FluidCursor cursor = fluid(at).cursor()) {
            cursor.setPressureTemperature(at.pressure, at.temperature);
            assertThat(cursor.snapshot()).isEqualTo(state);
            cursor.setPressureEnthalpy(at.pressure, state.enthalpy());
            assertThat(cursor.temperature()).isCloseTo(at.temperature, within(1e-6 * at.temperature));
            assertThat(cursor.enthalpy()).isCloseTo(state.enthalpy(), within(1e-9 * Math.abs(state.enthalpy()) + 1e-3));
            cursor.setPressureEntropy(at.pressure, state.entropy());
            assertThat(cursor.temperature()).isCloseTo(at.temperature, within(1e-6 * at.temperature));
            assertThat(cursor.isobaricHeatCapacity())
                    .isCloseTo(state.isobaricHeatCapacity(), within(1e-5 * state.isobaricHeatCapacity()));
        }
    }

    private FluidState warmed(Case at, double step) {
        return fluid(at).atPressureTemperature(at.pressure, at.temperature + step);
    }
}
