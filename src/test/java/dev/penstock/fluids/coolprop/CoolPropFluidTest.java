package dev.penstock.fluids.coolprop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.MethodSource;

@ParameterizedClass
@MethodSource("dev.penstock.fluids.coolprop.CoolPropWay#here")
class CoolPropFluidTest {

    @Parameter
    CoolPropWay way;

    @Test
    void aTwoPhaseStateTakesTransportFromTheSaturatedLiquid() {
        Fluid methane = way.fluids().propellant("methane").fluid();
        FluidState liquid = methane.saturatedLiquid(150);
        FluidState mixed = methane.atPressureEnthalpy(liquid.pressure(), liquid.enthalpy() + 50e3);
        assertThat(liquid.phase()).isEqualTo(Phase.LIQUID);
        assertThat(mixed.phase()).isEqualTo(Phase.TWO_PHASE);
        assertThat(mixed.temperature()).isCloseTo(150, within(1e-4));
        assertThat(mixed.viscosity()).isCloseTo(liquid.viscosity(), within(1e-6 * liquid.viscosity()));
        assertThat(mixed.soundSpeed()).isCloseTo(liquid.soundSpeed(), within(1e-4 * liquid.soundSpeed()));
        assertThat(mixed.vapourPressure().orElseThrow()).isCloseTo(liquid.pressure(), within(1.0));
    }

    @Test
    void vapourPressureIsAbsentAboveTheCriticalTemperature() {
        FluidState warm = way.fluids().propellant("methane").fluid().atPressureTemperature(10e6, 300);
        assertThat(warm.vapourPressure()).isEmpty();
        assertThat(warm.phase()).isEqualTo(Phase.SUPERCRITICAL);
    }

    @Test
    void aStateBeyondTheEquationsDataCarriesAWarning() {
        Fluid methane = way.fluids().propellant("methane").fluid();
        assertThat(methane.warnings(methane.atPressureTemperature(10e6, 600))).isEmpty();
        assertThat(methane.warnings(methane.atPressureTemperature(10e6, 700)))
                .singleElement()
                .satisfies(warning ->
                        assertThat(warning.message()).contains("700.0 K").contains("625.0 K"));
    }

    @Test
    void aFailureNamesFluidInputsAndTheLibrarysReason() {
        Fluid oxygen = way.fluids().propellant("oxygen").fluid();
        assertThatThrownBy(() -> oxygen.atPressureTemperature(1e6, -5))
                .isInstanceOf(PropertyFailure.class)
                .hasMessageContaining("oxygen")
                .hasMessageContaining("T = -5")
                .hasMessageContaining("-5");
    }

    @Test
    void anUnknownFluidIsAnsweredWithTheNearestNames() {
        assertThatThrownBy(() -> way.fluids().propellant("metane"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("did you mean methane");
    }

    @Test
    void threadsDoNotDisturbEachOther() throws Exception {
        Fluid nitrogen = way.fluids().propellant("nitrogen").fluid();
        double expected = nitrogen.atPressureTemperature(5e6, 300).density();
        ExecutorService pool = Executors.newFixedThreadPool(4);
        List<Callable<Double>> jobs = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            jobs.add(() -> {
                nitrogen.atPressureTemperature(9e6, 250);
                return nitrogen.atPressureTemperature(5e6, 300).density();
            });
        }
        for (Future<Double> answer : pool.invokeAll(jobs)) {
            assertThat(answer.get()).isEqualTo(expected);
        }
        pool.shutdown();
    }

    @Test
    void aClosedCursorRefusesToMove() {
        FluidCursor cursor = way.fluids().propellant("nitrogen").fluid().cursor();
        cursor.close();
        assertThatThrownBy(() -> cursor.setPressureTemperature(1e6, 300)).isInstanceOf(IllegalStateException.class);
    }
}
