package dev.penstock.numerics.optimum;

/**
 * A place that was tried, and what was found there.
 *
 * @param place coordinates in the unit cube
 * @param objectives what is to be small; NaN where there is no answer
 * @param excess how far each constraint is missed, in parts of its bound; zero or less where it is kept
 */
public record Trial(double[] place, double[] objectives, double[] excess) {

    /** Excess up to which a constraint counts as kept (-). */
    public static final double TOLERANCE = 1e-6;

    /** @return whether there is an answer at all */
    public boolean answered() {
        for (double objective : objectives) {
            if (!Double.isFinite(objective)) {
                return false;
            }
        }
        return true;
    }

    /** @return the first objective */
    public double objective() {
        return objectives[0];
    }

    /** @return sum of what constraints are missed by (-); infinite where there is no answer */
    public double violation() {
        if (!answered()) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (double e : excess) {
            sum += e > TOLERANCE ? e : 0;
        }
        return sum;
    }

    /** @return whether there is an answer that keeps every constraint */
    public boolean feasible() {
        return violation() == 0;
    }

    /**
     * By the first objective, constraints first: one that keeps them is better than one that does not, else the one that
     * misses them by less.
     *
     * @param other another trial
     * @return whether this one is better
     */
    public boolean betterThan(Trial other) {
        double mine = violation();
        double theirs = other.violation();
        return mine == 0 && theirs == 0 ? objective() < other.objective() : mine < theirs;
    }
}
