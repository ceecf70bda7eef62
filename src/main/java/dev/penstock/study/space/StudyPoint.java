package dev.penstock.study.space;

import java.util.Optional;

/**
 * What became of one point: numbers, no engine.
 *
 * @param values value of each varied input
 * @param figures value of each figure asked for, SI; NaN where the case does not have it, or does not close
 * @param failure why there is no answer
 */
public record StudyPoint(double[] values, double[] figures, Optional<Failure> failure) {

    /**
     * Why a point has no answer.
     *
     * @param kind what went wrong: "limit-reached", "not-converged", "invalid-input" ...
     * @param sentence one sentence
     */
    public record Failure(String kind, String sentence) {}

    /** @return whether the case closes there */
    public boolean closes() {
        return failure.isEmpty();
    }
}
