package dev.penstock.fluids.coolprop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
}
