package dev.penstock.numerics.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Steps of a bridge between two likelihoods, and what survives them. */
class TemperingTest {

    private static final double NEVER = Double.NEGATIVE_INFINITY;

    /** Worked by hand: weights go with exp(step gain); of 1 to 3 the effective number is 16/10. */
    @Test
    void weightsFollowTheGain() {
        double[] weights = Tempering.weights(new double[] {0, Math.log(9), NEVER}, 0.5);
        assertThat(weights[0]).isCloseTo(0.25, within(1e-12));
        assertThat(weights[1]).isCloseTo(0.75, within(1e-12));
        assertThat(weights[2]).isZero();
        assertThat(Tempering.effective(weights)).isCloseTo(1.6, within(1e-12));
        assertThat(Tempering.effective(new double[] {0.2, 0.2, 0.2, 0.2, 0.2})).isCloseTo(5, within(1e-12));
        assertThat(Tempering.effective(Tempering.weights(new double[] {NEVER, NEVER}, 1)))
                .isZero();
    }

    /** Identity: the step leaves just the share that is wanted effective, and the rest of the bridge is taken where that is more. */
    @Test
    void theStepLeavesTheShareThatIsWanted() {
        double[] gain = new double[500];
        for (int i = 0; i < gain.length; i++) {
            gain[i] = i % 10 == 0 ? NEVER : -0.01 * i * i;
        }
        double step = Tempering.step(gain, 1, 0.6);
        assertThat(step).isBetween(0.0, 1.0);
        assertThat(Tempering.effective(Tempering.weights(gain, step))).isCloseTo(0.6 * 450, within(1e-3));
        assertThat(Tempering.step(gain, 0.5 * step, 0.6)).isEqualTo(0.5 * step);
        assertThat(Tempering.step(new double[] {1, 1, 1}, 0.7, 0.9)).isEqualTo(0.7);
    }

    /** Identity: the logarithm of a mean of exponentials, also where they would overflow. */
    @Test
    void theMeanOfExponentialsDoesNotOverflow() {
        assertThat(Tempering.logMean(new double[] {Math.log(2), Math.log(6)}, 1))
                .isCloseTo(Math.log(4), within(1e-12));
        assertThat(Tempering.logMean(new double[] {2000, 2000}, 0.5)).isCloseTo(1000, within(1e-9));
        assertThat(Tempering.logMean(new double[] {0, NEVER}, 1)).isCloseTo(-Math.log(2), within(1e-12));
        assertThat(Tempering.logMean(new double[] {NEVER, NEVER}, 1)).isEqualTo(NEVER);
    }

    /** Systematic resampling: every point survives as often as its weight says, to less than one. */
    @Test
    void pointsSurviveByTheirWeight() {
        double[] weights = {0.05, 0.4, 0, 0.25, 0.3};
        SplittableRandom random = new SplittableRandom(3);
        int[] total = new int[5];
        for (int round = 0; round < 2000; round++) {
            int[] count = new int[5];
            for (int survivor : Tempering.survivors(weights, random)) {
                count[survivor]++;
            }
            for (int i = 0; i < 5; i++) {
                assertThat(Math.abs(count[i] - 5 * weights[i])).isLessThan(1);
                total[i] += count[i];
            }
        }
        for (int i = 0; i < 5; i++) {
            assertThat(total[i] / 10_000.0).isCloseTo(weights[i], within(0.02));
        }
    }
}
