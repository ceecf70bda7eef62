package dev.penstock.numerics.optimum;

import java.util.List;

/**
 * What a search found.
 *
 * @param best the best of all starts
 * @param starts what each start found
 * @param evaluations places tried in all
 * @param complete whether no start was stopped on its way
 */
public record Optimum(Trial best, List<Start> starts, int evaluations, boolean complete) {

    public Optimum {
        starts = List.copyOf(starts);
    }

    /**
     * One start.
     *
     * @param from where it began
     * @param best the best that it found
     * @param evaluations places that it tried
     * @param smooth whether the smooth finish improved on what the evolution strategy had found
     * @param steps each time that it found something better, the first place among them
     * @param complete whether it came to its end
     */
    public record Start(
            double[] from, Trial best, int evaluations, boolean smooth, List<Step> steps, boolean complete) {

        public Start {
            steps = List.copyOf(steps);
        }
    }

    /**
     * Something better than all that a start had tried before.
     *
     * @param evaluations places that it had tried by then
     * @param trial what it found
     */
    public record Step(int evaluations, Trial trial) {}
}
