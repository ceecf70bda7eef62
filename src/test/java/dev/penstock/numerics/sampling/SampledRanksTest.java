package dev.penstock.numerics.sampling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Simulation-based calibration [talts-2018] of the sampler alone, with few points: truths from the prior, two linear claims with normal
 * errors, two levels that lead to them wrongly, and a bound in the middle of what is likely, behind which only the last level finds
 * nothing. Where samples are those of the posterior, as many truths lie below a tenth of them as below any other.
 */
class SampledRanksTest {

    private static final int TRUTHS = 200;
    private static final int BINS = 10;
    private static final double BOUND = -1;
    private static final double[] SIGMAS = {0.12, 0.06};
    /** 0.999 quantile of chi-square with nine degrees of freedom: a table value. */
    private static final double MOST = 27.88;

    private static double[] claims(double[] x) {
        return new double[] {0.5 * x[0] + x[1] + 0.3 * x[2] + 0.2 * x[3], 0.1 * x[1] + 0.9 * x[2] - 0.8 * x[0]};
    }

    private static Ladder<Integer> ladder(double[] claimed) {
        return new Ladder<>() {
            @Override
            public int dimensions() {
                return 4;
            }

            @Override
            public int levels() {
                return 3;
            }

            @Override
            public Evaluation<Integer> evaluate(int level, double[] x) {
                if (level == 2 && x[1] < BOUND) {
                    return Evaluation.impossible();
                }
                double off = new double[] {0.1, 0.02, 0}[level];
                double[] predicted = claims(x);
                double sum = 0;
                for (int i = 0; i < claimed.length; i++) {
                    double distance = predicted[i] + off * Math.sin(2 * x[i]) - claimed[i];
                    double variance = SIGMAS[i] * SIGMAS[i] + 0.5 * off * off;
                    sum -= 0.5 * (distance * distance / variance + Math.log(variance));
                }
                return new Evaluation<>(sum, Optional.of(level));
            }
        };
    }

    private static double[] truth(SplittableRandom random) {
        double[] x = new double[4];
        do {
            Arrays.setAll(x, i -> random.nextGaussian());
        } while (x[1] < BOUND);
        return x;
    }

    @Test
    void truthsLieAnywhereAmongTheirSamples() {
        int[][] counts = new int[4][BINS];
        for (int t = 0; t < TRUTHS; t++) {
            SplittableRandom random = new Streams(3).of(t);
            double[] truth = truth(random);
            double[] claimed = claims(truth);
            for (int i = 0; i < claimed.length; i++) {
                claimed[i] += SIGMAS[i] * random.nextGaussian();
            }
            SampledPosterior<Integer> posterior = new TemperedSampler<>(
                            ladder(claimed), SamplerEffort.usual(t, 64, 16, 8), Workers.HERE, () -> false, n -> {})
                    .run();
            for (int d = 0; d < 4; d++) {
                int at = d;
                long below = posterior.samples().stream()
                        .filter(s -> s.point().get(at) < truth[at])
                        .count();
                double share =
                        (below + random.nextDouble()) / (posterior.samples().size() + 1);
                counts[d][(int) (BINS * share)]++;
            }
        }
        double expected = (double) TRUTHS / BINS;
        for (int[] count : counts) {
            double chiSquare = Arrays.stream(count)
                    .mapToDouble(c -> (c - expected) * (c - expected) / expected)
                    .sum();
            assertThat(chiSquare).as(Arrays.toString(count)).isLessThan(MOST);
        }
    }
}
