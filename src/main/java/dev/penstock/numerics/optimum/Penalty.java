package dev.penstock.numerics.optimum;

import java.util.Arrays;
import java.util.List;

/**
 * One number for a trial: the objective in parts of its usual spread, and the exact penalty of what is missed.
 * <pre>F = (f − f0)/s + ρ Σ max(0, e);  s = half of the middle half of the objectives of a first design, f0 their median</pre>
 *
 * @param middle median of the objective
 * @param spread usual spread of the objective
 * @param weight weight of what is missed
 */
record Penalty(double middle, double spread, double weight) {

    private static final double WEIGHT = 20;
    private static final double NO_ANSWER = 1e6;

    static Penalty of(List<Trial> design) {
        double[] values = design.stream()
                .filter(Trial::answered)
                .mapToDouble(Trial::objective)
                .sorted()
                .toArray();
        if (values.length == 0) {
            return new Penalty(0, 1, WEIGHT);
        }
        double median = values[values.length / 2];
        double spread = 0.5 * (values[3 * values.length / 4] - values[values.length / 4]);
        double least = 1e-3 * Math.max(Math.abs(median), 1e-300);
        return new Penalty(median, Math.max(spread, least), WEIGHT);
    }

    Penalty heavier() {
        return new Penalty(middle, spread, 100 * weight);
    }

    double scaled(double objective) {
        return (objective - middle) / spread;
    }

    /** @param away distance from where the search began, so that places without an answer lead back */
    double of(Trial trial, double away) {
        return trial.answered()
                ? scaled(trial.objective())
                        + weight
                                * Arrays.stream(trial.excess())
                                        .map(e -> Math.max(0, Math.min(e, NO_ANSWER)))
                                        .sum()
                : NO_ANSWER * (1 + away);
    }
}
