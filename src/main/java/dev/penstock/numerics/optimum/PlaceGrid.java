package dev.penstock.numerics.optimum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which coordinates of a problem are continuous, whole or named, and where their parts of the unit length lie. */
final class PlaceGrid {

    private final Problem problem;

    PlaceGrid(Problem problem) {
        this.problem = problem;
    }

    /** Coordinates that are continuous. */
    List<Integer> continuous() {
        return which(0);
    }

    /** Coordinates that count. */
    List<Integer> whole() {
        return which(1);
    }

    /** Coordinates that are names. */
    List<Integer> named() {
        return which(2);
    }

    private List<Integer> which(int kind) {
        List<Integer> list = new ArrayList<>();
        for (int i = 0; i < problem.dimensions(); i++) {
            int own = problem.count(i) == 0 ? 0 : problem.named(i) ? 2 : 1;
            if (own == kind) {
                list.add(i);
            }
        }
        return list;
    }

    /** Which of its values a coordinate has there. */
    int value(int i, double x) {
        return (int) Math.max(0, Math.min(problem.count(i) - 1, Math.floor(x * problem.count(i))));
    }

    /** The middle of a value's part. */
    double middle(int i, int value) {
        return (value + 0.5) / problem.count(i);
    }

    /** Puts what counts, or is a name, into the middle of its part. */
    void settle(double[] place) {
        for (int i = 0; i < place.length; i++) {
            place[i] = Math.max(0, Math.min(1, place[i]));
            if (problem.count(i) > 0) {
                place[i] = middle(i, value(i, place[i]));
            }
        }
    }

    /** Every combination of the names, as places of the named coordinates in their order; one empty if there are none. */
    List<double[]> combinations(int most) {
        List<double[]> all = new ArrayList<>(List.of(new double[0]));
        for (int i : named()) {
            List<double[]> longer = new ArrayList<>();
            for (double[] one : all) {
                for (int value = 0; value < problem.count(i) && longer.size() <= most; value++) {
                    double[] more = Arrays.copyOf(one, one.length + 1);
                    more[one.length] = middle(i, value);
                    longer.add(more);
                }
            }
            all = longer;
        }
        return all;
    }
}
