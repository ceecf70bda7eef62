package dev.penstock.cycles.solving;

import dev.penstock.cycles.sheet.BalanceModels;

/**
 * Work done on balances, those included that failed, in evaluations of the cycle's equations: what a search may spend is bounded by
 * it, and so depends neither on the machine nor on what else runs there. Not thread-safe.
 */
final class SolvingWork {

    /**
     * Evaluations that a march through a jacket stands for (-): measured over 136 random balances, of which the evaluations and
     * marches so weighed explain 0.90 of the variance of processor time.
     */
    private static final int MARCH = 4;

    private long spent;

    /** Adds what one attempt at a balance took. */
    void add(BalanceModels attempt) {
        spent += attempt.evaluations() + (long) MARCH * attempt.jackets().marches();
    }

    /** @return work so far (evaluations) */
    long spent() {
        return spent;
    }
}
