package dev.penstock.numerics.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Posteriors that are known in closed form, or by quadrature: identities, no outside source needed. */
class TemperedSamplerTest {

    /** Levels of one kind of likelihood, without detail. */
    @SafeVarargs
    private static Ladder<Integer> ladder(int dimensions, ToDoubleFunction<double[]>... levels) {
        return new Ladder<>() {
            @Override
            public int dimensions() {
                return dimensions;
            }

            @Override
            public int levels() {
                return levels.length;
            }

            @Override
            public Evaluation<Integer> evaluate(int level, double[] point) {
                return new Evaluation<>(levels[level].applyAsDouble(point), Optional.of(level));
            }
        };
    }

    private static SampledPosterior<Integer> sampled(Ladder<Integer> ladder, long seed, Integer... particles) {
        return sampled(ladder, SamplerEffort.usual(seed, particles), Workers.HERE);
    }

    private static SampledPosterior<Integer> sampled(Ladder<Integer> ladder, SamplerEffort effort, Workers workers) {
        return new TemperedSampler<>(ladder, effort, workers, () -> false, n -> {}).run();
    }

    private static double mean(SampledPosterior<Integer> posterior, ToDoubleFunction<List<Double>> of) {
        return posterior.samples().stream()
                .mapToDouble(s -> of.applyAsDouble(s.point()))
                .average()
                .orElseThrow();
    }

    private static double spread(SampledPosterior<Integer> posterior, ToDoubleFunction<List<Double>> of) {
        double mean = mean(posterior, of);
        return Math.sqrt(mean(posterior, p -> Math.pow(of.applyAsDouble(p) - mean, 2)));
    }

    private static double normal(double x, double sigma) {
        return -0.5 * x * x / (sigma * sigma) - Math.log(sigma * Math.sqrt(2 * Math.PI));
    }

    /** The sum of all unknowns is 3 and the first less the last 1, each within its noise. */
    private static double linear(double[] x, double first, double second) {
        double sum = 0;
        for (double each : x) {
            sum += each;
        }
        return normal(sum - 3, first) + normal(x[0] - x[x.length - 1] - 1, second);
    }

    /** In closed form: sum and difference are independent under the prior, of variance d and 2. */
    private static void linearGaussian(int d, int particles) {
        double s1 = 0.3;
        double s2 = 0.1;
        SampledPosterior<Integer> posterior = sampled(ladder(d, x -> linear(x, s1, s2)), 11, particles);
        double meanOfSum = 3 * d / (d + s1 * s1);
        double spreadOfSum = Math.sqrt(d * s1 * s1 / (d + s1 * s1));
        double spreadOfDifference = Math.sqrt(2 * s2 * s2 / (2 + s2 * s2));
        double error = 1 / Math.sqrt(posterior.effective());
        ToDoubleFunction<List<Double>> sum = p -> p.stream().mapToDouble(x -> x).sum();
        ToDoubleFunction<List<Double>> difference = p -> p.get(0) - p.get(d - 1);
        assertThat(mean(posterior, sum)).isCloseTo(meanOfSum, within(4 * spreadOfSum * error));
        assertThat(spread(posterior, sum)).isCloseTo(spreadOfSum, within(4 * spreadOfSum * error));
        assertThat(mean(posterior, difference)).isCloseTo(2 / (2 + s2 * s2), within(4 * spreadOfDifference * error));
        assertThat(spread(posterior, difference)).isCloseTo(spreadOfDifference, within(4 * spreadOfDifference * error));
        double evidence = normal(3, Math.sqrt(d + s1 * s1)) + normal(1, Math.sqrt(2 + s2 * s2));
        assertThat(posterior.logEvidence()).isCloseTo(evidence, within(4 * posterior.evidenceError()));
        assertThat(posterior.evidenceError()).isLessThan(0.15);
        assertThat(posterior.effective()).isGreaterThan(0.2 * particles);
    }

    @Test
    void linearGaussianInTwoDimensions() {
        linearGaussian(2, 1500);
    }

    /** A kind of engine is given up by a swift answer three errors below another: the error must be about what it says. */
    @Test
    void aSwiftAnswerKnowsHowRoughItsEvidenceIs() {
        double evidence = normal(3, Math.sqrt(2 + 0.09)) + normal(1, Math.sqrt(2 + 0.01));
        int seeds = 60;
        int far = 0;
        for (int seed = 0; seed < seeds; seed++) {
            SampledPosterior<Integer> posterior = sampled(
                    ladder(2, x -> linear(x, 0.6, 0.4), x -> linear(x, 0.3, 0.1)),
                    SamplerEffort.swift(seed, 64, 16),
                    Workers.HERE);
            far += Math.abs(posterior.logEvidence() - evidence) > 3 * posterior.evidenceError() ? 1 : 0;
        }
        assertThat(far).isLessThan(seeds / 10);
    }

    @Test
    void linearGaussianInTenDimensions() {
        linearGaussian(10, 1500);
    }

    /** With a hundred thousand evaluations the spreads in ten dimensions are right within two per cent. */
    @Test
    void spreadsInTenDimensionsAreRightWithinTwoPercent() {
        SamplerEffort effort = new SamplerEffort(List.of(2000), 0.5, 2, 4, 30, 15, 5);
        SampledPosterior<Integer> posterior = sampled(ladder(10, x -> linear(x, 1, 1)), effort, Workers.HERE);
        assertThat(posterior.evaluations().get(0)).isLessThan(100_000);
        // Variance of an unknown that is in the sum only: 1 − 1/(d + s²).
        double expected = Math.sqrt(1 - 1.0 / 11);
        double found = IntStream.range(1, 9)
                .mapToDouble(i -> spread(posterior, p -> p.get(i)))
                .average()
                .orElseThrow();
        assertThat(found).isCloseTo(expected, within(0.02 * expected));
    }

    /** A bent ridge, against sums over a fine grid. */
    @Test
    void curvedInTwoDimensions() {
        ToDoubleFunction<double[]> bent = x -> normal(x[1] + x[0] * x[0] - 1, 0.2);
        double[] sums = new double[4];
        double h = 0.01;
        for (double x = -6; x < 6; x += h) {
            for (double y = -6; y < 6; y += h) {
                double weight = Math.exp(normal(x, 1) + normal(y, 1) + bent.applyAsDouble(new double[] {x, y})) * h * h;
                sums[0] += weight;
                sums[1] += weight * y;
                sums[2] += weight * x * x;
                sums[3] += weight * y * y;
            }
        }
        SampledPosterior<Integer> posterior = sampled(ladder(2, bent), 3, 3000);
        double error = 4 / Math.sqrt(posterior.effective());
        assertThat(mean(posterior, p -> p.get(1))).isCloseTo(sums[1] / sums[0], within(error));
        assertThat(mean(posterior, p -> p.get(0) * p.get(0))).isCloseTo(sums[2] / sums[0], within(error));
        assertThat(mean(posterior, p -> p.get(1) * p.get(1))).isCloseTo(sums[3] / sums[0], within(1.5 * error));
        assertThat(posterior.logEvidence()).isCloseTo(Math.log(sums[0]), within(4 * posterior.evidenceError()));
    }

    /** Two narrow modes far apart: both are found, with half of the samples each. */
    @Test
    void bothOfTwoModesAreFound() {
        SampledPosterior<Integer> posterior =
                sampled(ladder(4, x -> normal(x[0] * x[0] - 2.25, 0.15) + normal(x[1], 0.1)), 9, 1500);
        double right = mean(posterior, p -> p.get(0) > 0 ? 1 : 0);
        assertThat(right).isBetween(0.4, 0.6);
        assertThat(mean(posterior, p -> Math.abs(p.get(0)))).isCloseTo(1.5, within(0.02));
    }

    /** A cheap level that is wrong by two of its own deviations leads to the same posterior and evidence. */
    @Test
    void aWrongCheapLevelChangesNothing() {
        ToDoubleFunction<double[]> right = x -> linear(x, 0.3, 0.1);
        ToDoubleFunction<double[]> wrong = x -> linear(new double[] {x[0] + 0.3, x[1]}, 0.4, 0.2) - 5;
        SampledPosterior<Integer> posterior = sampled(ladder(2, wrong, right), 17, 2000, 1000);
        double spreadOfSum = Math.sqrt(2 * 0.09 / 2.09);
        assertThat(mean(posterior, p -> p.get(0) + p.get(1)))
                .isCloseTo(6 / 2.09, within(4 * spreadOfSum / Math.sqrt(posterior.effective())));
        double evidence = normal(3, Math.sqrt(2.09)) + normal(1, Math.sqrt(2.01));
        assertThat(posterior.logEvidence()).isCloseTo(evidence, within(4 * posterior.evidenceError()));
    }

    /** What is impossible has no likelihood and is counted; half of the prior here, so half of the evidence. */
    @Test
    void impossiblePointsAreCountedAndWeighNothing() {
        SampledPosterior<Integer> posterior = sampled(ladder(3, x -> x[0] > 0 ? 0 : Double.NEGATIVE_INFINITY), 1, 1000);
        assertThat(posterior.impossible()).isGreaterThan(400);
        assertThat(posterior.samples()).allMatch(s -> s.point().get(0) > 0);
        assertThat(posterior.logEvidence()).isCloseTo(Math.log(0.5), within(0.02));
        SampledPosterior<Integer> none = sampled(ladder(3, x -> Double.NEGATIVE_INFINITY), 1, 100);
        assertThat(none.samples()).isEmpty();
        assertThat(none.logEvidence()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(none.complete()).isTrue();
    }

    /** In another order, as threads would do it. */
    @Test
    void theOrderOfTheWorkMovesNoBit() {
        Ladder<Integer> ladder = ladder(3, x -> linear(x, 0.3, 0.1));
        SamplerEffort effort = SamplerEffort.usual(4, 200);
        Workers backwards = (count, work) -> {
            for (int i = count - 1; i >= 0; i--) {
                work.accept(i);
            }
        };
        Workers parallel = (count, work) -> IntStream.range(0, count).parallel().forEach(work);
        SampledPosterior<Integer> one = sampled(ladder, effort, Workers.HERE);
        assertThat(sampled(ladder, effort, backwards)).isEqualTo(one);
        assertThat(sampled(ladder, effort, parallel)).isEqualTo(one);
        assertThat(sampled(ladder, SamplerEffort.usual(5, 200), Workers.HERE)).isNotEqualTo(one);
    }

    @Test
    void itStopsWhenAskedAndSaysSo() {
        AtomicInteger asked = new AtomicInteger();
        SampledPosterior<Integer> posterior = new TemperedSampler<>(
                        ladder(2, x -> linear(x, 0.3, 0.1)),
                        SamplerEffort.usual(1, 100),
                        Workers.HERE,
                        () -> asked.incrementAndGet() > 3,
                        n -> {})
                .run();
        assertThat(posterior.complete()).isFalse();
        assertThat(posterior.samples()).isEmpty();
    }
}
