package dev.penstock.claims.answer;

import dev.penstock.errors.InvalidInput;

/**
 * How much is spent on a judgement.
 *
 * @param samples points carried for each kind of engine
 * @param seed what the random numbers start from
 */
public record JudgeEffort(int samples, long seed) {

    /** Fewer say nothing of percentiles. */
    public static final int FEWEST = 16;

    private static final int MOST = 20_000;
    /** Points that the chamber alone leads for one that is balanced. */
    private static final int CHAMBERS = 2;
    /** Points that surfaces lead for one that is balanced. */
    private static final int SCOUTS = 8;

    /** A first answer is worth its cost only where the whole has at least so many times its points. */
    private static final int ROUGH = 4;
    /** Candidates of the prior at least: enough to learn what engines do beside their chambers. */
    private static final int LEARNT = 64;

    /** The usual effort. */
    public static final JudgeEffort USUAL = new JudgeEffort(160, 1);

    public JudgeEffort {
        if (samples < FEWEST || samples > MOST) {
            throw new InvalidInput("", "samples", Integer.toString(samples), "allowed is " + FEWEST + " to " + MOST);
        }
    }

    int scouts(int points) {
        return SCOUTS * points;
    }

    int chambers(int points) {
        return CHAMBERS * points;
    }

    /** Points of a first answer; none where the whole is hardly more. */
    int rough() {
        return samples >= ROUGH * FEWEST ? FEWEST : 0;
    }

    int leftOut() {
        return Math.max(FEWEST, samples / 2);
    }

    int prior() {
        return Math.max(LEARNT, samples / 2);
    }
}
