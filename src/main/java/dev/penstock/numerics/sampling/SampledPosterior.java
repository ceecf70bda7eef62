package dev.penstock.numerics.sampling;

import java.util.List;

/**
 * What a sampler found.
 *
 * @param samples samples of equal weight, each with its evaluation at the last level; empty if no point is possible
 * @param logEvidence natural logarithm of the evidence, the mean of the likelihood over the prior; negative infinity if
 *     no point is possible
 * @param evidenceError standard error of that logarithm
 * @param effective number of independent samples that say as much about the worst known unknown
 * @param evaluations evaluations at each level
 * @param impossible how many of the evaluations at the last level found the point impossible
 * @param complete whether nobody stopped it; otherwise there are no samples
 * @param <T> kind of detail
 */
public record SampledPosterior<T>(
        List<Sample<T>> samples,
        double logEvidence,
        double evidenceError,
        double effective,
        List<Integer> evaluations,
        int impossible,
        boolean complete) {

    /**
     * A sample.
     *
     * @param point place in the standard normal space
     * @param evaluation what is known of it at the last level
     * @param <T> kind of detail
     */
    public record Sample<T>(List<Double> point, Evaluation<T> evaluation) {

        public Sample {
            point = List.copyOf(point);
        }
    }

    public SampledPosterior {
        samples = List.copyOf(samples);
        evaluations = List.copyOf(evaluations);
    }
}
