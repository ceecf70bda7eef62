package dev.penstock.numerics.optimum;

import java.util.Optional;

/** Tries places for one start, and keeps the best and their number. Belongs to one thread. */
final class SearchState {

    private final Problem problem;
    private final PlaceGrid grid;
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
        }
    }

    Trial best() {
        return best.orElseThrow();
    }

    int evaluations() {
        return evaluations;
    }
}
