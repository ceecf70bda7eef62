package dev.penstock.numerics.sampling;

import java.util.Optional;

/**
 * What is known of a point at one level of a ladder.
 *
 * @param logLikelihood natural logarithm of the likelihood; negative infinity where the point is impossible
 * @param detail whatever the caller wants to keep of the point; empty where there is nothing
 * @param <T> kind of detail
 */
public record Evaluation<T>(double logLikelihood, Optional<T> detail) {

    public Evaluation {
        if (Double.isNaN(logLikelihood) || logLikelihood == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("a likelihood is a number below infinity, not " + logLikelihood);
        }
    }

    /**
     * @param <T> kind of detail
     * @return a point that cannot be
     */
    public static <T> Evaluation<T> impossible() {
        return new Evaluation<>(Double.NEGATIVE_INFINITY, Optional.empty());
    }

    /** @return whether the point can be at all */
    public boolean possible() {
        return logLikelihood > Double.NEGATIVE_INFINITY;
    }
}
