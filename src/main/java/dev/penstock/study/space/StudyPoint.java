package dev.penstock.study.space;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import java.util.Locale;
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
    public record Failure(String kind, String sentence) {

        /**
         * @param e a failure of the models or of the input
         * @return it; "NotConverged" is "not-converged"
         */
        public static Failure of(PenstockException e) {
            String kind = e.getClass()
                    .getSimpleName()
                    .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
                    .toLowerCase(Locale.ROOT);
            return new Failure(
                    kind,
                    e instanceof InvalidInput input ? input.problems().get(0).sentence() : e.getMessage());
        }
    }

    /** @return whether the case closes there */
    public boolean closes() {
        return failure.isEmpty();
    }
}
