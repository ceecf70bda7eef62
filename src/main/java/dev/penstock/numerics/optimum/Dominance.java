package dev.penstock.numerics.optimum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Ranks trials by what dominates them, constraints first, and tells how much room each has among its like.
 * <pre>a dominates b: a keeps the constraints and b does not; or both miss them, a by less; or both keep them and a is nowhere
 * worse and somewhere better</pre>
 */
final class Dominance {

    private Dominance() {}

    /**
     * @param a a trial
     * @param b another
     * @return whether the first dominates the second
     */
    static boolean dominates(Trial a, Trial b) {
        double mine = a.violation();
        double theirs = b.violation();
        if (mine > 0 || theirs > 0) {
            return mine < theirs;
        }
        boolean better = false;
        for (int k = 0; k < a.objectives().length; k++) {
            if (a.objectives()[k] > b.objectives()[k]) {
                return false;
            }
            better |= a.objectives()[k] < b.objectives()[k];
        }
        return better;
    }

    /** Fronts of the trials, by their places in the list, the best first. */
    static List<List<Integer>> fronts(List<Trial> trials) {
        int n = trials.size();
        int[] dominators = new int[n];
        List<List<Integer>> dominated = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            dominated.add(new ArrayList<>());
            for (int j = 0; j < n; j++) {
                if (dominates(trials.get(i), trials.get(j))) {
                    dominated.get(i).add(j);
                } else if (dominates(trials.get(j), trials.get(i))) {
                    dominators[i]++;
                }
            }
        }
        List<List<Integer>> fronts = new ArrayList<>();
        List<Integer> front = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (dominators[i] == 0) {
                front.add(i);
            }
        }
        while (!front.isEmpty()) {
            fronts.add(front);
            List<Integer> next = new ArrayList<>();
            for (int i : front) {
                for (int j : dominated.get(i)) {
                    if (--dominators[j] == 0) {
                        next.add(j);
                    }
                }
            }
            next.sort(Comparator.naturalOrder());
            front = next;
        }
        return fronts;
    }

    /** Crowding distance of each trial of a front, in its order; infinite at the ends. */
    static double[] room(List<Trial> trials, List<Integer> front) {
        double[] room = new double[front.size()];
        int objectives = trials.get(front.get(0)).objectives().length;
        for (int k = 0; k < objectives; k++) {
            int objective = k;
            Integer[] order = new Integer[front.size()];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, Comparator.comparingDouble(i -> trials.get(front.get(i))
                    .objectives()[objective]));
            double low = trials.get(front.get(order[0])).objectives()[k];
            double high = trials.get(front.get(order[order.length - 1])).objectives()[k];
            room[order[0]] = Double.POSITIVE_INFINITY;
            room[order[order.length - 1]] = Double.POSITIVE_INFINITY;
            for (int i = 1; i < order.length - 1 && high > low; i++) {
                room[order[i]] += (trials.get(front.get(order[i + 1])).objectives()[k]
                                - trials.get(front.get(order[i - 1])).objectives()[k])
                        / (high - low);
            }
        }
        return room;
    }
}
