package dev.penstock.numerics.optimum;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tries places for one start, and keeps their number and each that was the best by then. Belongs to one thread. */
final class SearchState {

    private final Problem problem;
    private final PlaceGrid grid;
    private final List<Optimum.Step> steps = new ArrayList<>();
    private Optional<Trial> best = Optional.empty();
    private int evaluations;

    SearchState(Problem problem, PlaceGrid grid) {
        this.problem = problem;
        this.grid = grid;
    }

    Trial at(double[] place) {
        double[] settled = place.clone();
        grid.settle(settled);
        Trial trial = problem.at(settled);
        evaluations++;
        offer(trial);
        return trial;
    }

    void offer(Trial trial) {
        if (best.isEmpty() || trial.betterThan(best.get())) {
            best = Optional.of(trial);
            steps.add(new Optimum.Step(evaluations, trial));
        }
    }

    Trial best() {
        return best.orElseThrow();
    }

    List<Optimum.Step> steps() {
        return steps;
    }

    int evaluations() {
        return evaluations;
    }
}
