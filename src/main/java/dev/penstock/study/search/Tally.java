package dev.penstock.study.search;

import dev.penstock.numerics.optimum.Trial;
import dev.penstock.study.Progress;

/** Counts places over all threads and tells the best so far. */
final class Tally {

    private final Progress progress;
    private final int of;
    private final Objective objective;
    private int done;
    private Trial best;

    Tally(Progress progress, int of, Objective objective) {
        this.progress = progress;
        this.of = of;
        this.objective = objective;
    }

    synchronized void one(Trial trial) {
        done++;
        if (best == null || trial.betterThan(best)) {
            best = trial;
        }
        String what = best.feasible()
                ? objective.figure().title() + " "
                        + objective.figure().notation().writeWithUnit(objective.cost(best.objective()))
                : "nothing feasible yet";
        progress.done(done, Math.max(of, done), what);
    }
}
