package dev.penstock.fluids.coolprop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;
import dev.penstock.fluids.state.SaturationSamples;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The curve of vapour pressure against the full equation's solution for both phases. */
class VapourPressureCurveTest {

    private static final int POINTS = 300;

    /** At the triple point of a heavy fluid CoolProp's own solution scatters by more than a part in a thousand (Pa). */
    private static final double NOTHING = 1e-4;

    @ParameterizedTest
    @ValueSource(
            strings = {"methane", "hydrogen", "oxygen", "nitrogen", "propane", "ethanol", "ammonia", "water", "helium"})
    void theCurveMeetsTheFullEquation(String id) {
        CoolPropFluid fluid =
                (CoolPropFluid) CoolPropWay.WORKER.fluids().propellant(id).fluid();
        double cold = fluid.range().minimumTemperature();
        double hot = fluid.criticalTemperature().orElseThrow() * 0.999;
        Random random = new Random(1);
        for (int i = 0; i < POINTS; i++) {
            double temperature = cold + (hot - cold) * random.nextDouble();
            double exact = fluid.saturatedLiquid(temperature).pressure();
            assertThat(fluid.vapourPressure(temperature))
                    .as("%s K", temperature)
                    .isCloseTo(exact, within(1e-5 * exact + NOTHING));
        }
    }

    /** A state between the phases is found by way of the curve, and is where CoolProp's own search by pressure has it. */
    @ParameterizedTest
    @ValueSource(strings = {"methane", "hydrogen", "ammonia"})
    void boilingSoughtByTemperatureIsThatSoughtByPressure(String id) {
        CoolPropFluid fluid =
                (CoolPropFluid) CoolPropWay.WORKER.fluids().propellant(id).fluid();
        for (int i = 0; i < 20; i++) {
            double pressure = fluid.criticalPressure().orElseThrow() * Math.exp(-0.01 - 0.2 * i);
            SaturationSamples ends = fluid.saturation(new double[] {pressure}).orElseThrow();
            double middle = 0.5 * (ends.liquidEnthalpy()[0] + ends.vapourEnthalpy()[0]);
            FluidState state = fluid.atPressureEnthalpy(pressure, middle);
            assertThat(state.phase()).isEqualTo(Phase.TWO_PHASE);
            assertThat(state.temperature()).isCloseTo(ends.temperature()[0], within(1e-8 * ends.temperature()[0]));
            assertThat(state.enthalpy()).isCloseTo(middle, within(1e-8 * Math.abs(middle)));
        }
    }
}
