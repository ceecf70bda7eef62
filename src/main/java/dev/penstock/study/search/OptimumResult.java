package dev.penstock.study.search;

import dev.penstock.study.space.StudyPoint;
import java.util.List;

/**
 * What a search for the best of a case found.
 *
 * @param question what was asked
 * @param filed the case as its files are
 * @param best the best point, balanced again
 * @param starts the starts
 * @param evaluations points tried
 * @param seed seed of the random numbers
 * @param complete whether the search came to its end
 */
public record OptimumResult(
        Question question,
        StudyPoint filed,
        StudyPoint best,
        List<Start> starts,
        int evaluations,
        long seed,
        boolean complete) {

    public OptimumResult {
        starts = List.copyOf(starts);
    }

    /**
     * One start.
     *
     * @param from values that it began with
     * @param values values of the best that it found
     * @param objective value of the objective there, SI; NaN if nothing closes
     * @param feasible whether the constraints are kept there
     * @param evaluations points that it tried
     * @param smooth whether the smooth finish improved on the evolution strategy
     * @param steps each time that it found something better
     */
    public record Start(
            double[] from,
            double[] values,
            double objective,
            boolean feasible,
            int evaluations,
            boolean smooth,
            List<Step> steps) {

        public Start {
            steps = List.copyOf(steps);
        }
    }

    /**
     * The best that a start had by then.
     *
     * @param evaluations points that it had tried
     * @param objective value of the objective, SI; NaN if nothing closed yet
     * @param feasible whether the constraints are kept
     */
    public record Step(int evaluations, double objective, boolean feasible) {}

    /** @return whether the best point closes and keeps every constraint */
    public boolean feasible() {
        return question.feasible(best);
    }

    /** @return what is gained over the files, in parts of their value (-); NaN where they have none */
    public double gain() {
        Objective objective = question.objectives().get(0);
        double before = filed.figures()[0];
        double after = best.figures()[0];
        return (objective.most() ? after - before : before - after) / Math.abs(before);
    }
}
