package dev.penstock.claims.likelihood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.numerics.sampling.TemperedSampler;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Engines made up from their chambers: identities, no outside source needed. */
class EngineOverChamberTest {

    private static final List<double[]> POINTS = TemperedSampler.prior(2, 40);
    private static final int IMPULSE = 0;
    private static final int MASS = 1;
    private static final int PRESSURE = 2;
    private static final double[] HERE = {0.3, -0.8};
    private static final double DOUBT = 14;

    private static double alone(double[] point) {
        return 350 + 10 * point[0];
    }

    /** Impulse of the engine 3 % below its chamber's; a mass of which the chamber says nothing; every fourth does not close. */
    private static EngineOverChamber learnt(int count) {
        double[][] chambers = new double[count][];
        List<Optional<Sighting>> seen = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double impulse = alone(POINTS.get(i));
            chambers[i] = new double[] {impulse, Double.NaN, 7e6};
            seen.add(
                    i % 4 == 0
                            ? Optional.empty()
                            : Optional.of(
                                    new Sighting(List.of(), List.of(), List.of(0.97 * impulse, 120.0, 7e6), 1, "")));
        }
        return EngineOverChamber.of(POINTS.subList(0, count), chambers, seen, List.of(false, false, true));
    }

    @Test
    void whatEnginesDoBesideTheirChambersIsLearnt() {
        EngineOverChamber.Led led = learnt(40).led(IMPULSE, HERE, alone(HERE), DOUBT);
        assertThat(led.value()).isCloseTo(0.97 * alone(HERE), within(1e-9));
        assertThat(led.doubt()).isLessThan(1e-9);
    }

    @Test
    void whatTheChamberSaysNothingOfIsLearntItself() {
        assertThat(learnt(40).led(MASS, HERE, Double.NaN, Double.NaN).value()).isCloseTo(120, within(1e-9));
    }

    @Test
    void anUnknownItselfIsLeftAsItIs() {
        assertThat(learnt(40).led(PRESSURE, HERE, 5e6, 0)).isEqualTo(new EngineOverChamber.Led(5e6, 0));
    }

    @Test
    void withFewEnginesTheChamberLeadsWithItsDoubt() {
        EngineOverChamber.Led plain = new EngineOverChamber.Led(alone(HERE), DOUBT);
        assertThat(learnt(4).led(IMPULSE, HERE, alone(HERE), DOUBT)).isEqualTo(plain);
        assertThat(EngineOverChamber.UNKNOWN.led(IMPULSE, HERE, alone(HERE), DOUBT))
                .isEqualTo(plain);
    }

    @Test
    void aSurfaceLessSureThanTheRuleIsNotUsed() {
        EngineOverChamber.Led plain = new EngineOverChamber.Led(alone(HERE), 0);
        assertThat(learnt(40).led(IMPULSE, HERE, alone(HERE), 0)).isEqualTo(plain);
    }

    @Test
    void aChamberThatCannotBeHasNoPrediction() {
        assertThat(learnt(40).led(IMPULSE, HERE, Double.NaN, Double.NaN).value())
                .isNaN();
    }
}
