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

    /** Of a kind that weighs little, where a claim is left out. */
    private static final int FEWEST_LEFT_OUT = 8;

    private static final int MOST = 20_000;
    /** Points that the chamber alone leads for one that is balanced. */
    private static final int CHAMBERS = 2;
    /** Points that surfaces lead for one that is balanced. */
    private static final int SCOUTS = 8;
    /** What costs little is not stinted: chambers and surfaces at least. */
    private static final int FEWEST_CHAMBERS = 32;

    private static final int FEWEST_SCOUTS = 512;

    /** A first answer is worth its cost only where the whole has at least so many times its points. */
    private static final int ROUGH = 4;
    /** Candidates of the prior at least: enough to learn what engines do beside their chambers. */
    private static final int LEARNT = 48;

    /** The usual effort. */
    public static final JudgeEffort USUAL = new JudgeEffort(64, 1);

    public JudgeEffort {
        if (samples < FEWEST || samples > MOST) {
            throw new InvalidInput("", "samples", Integer.toString(samples), "allowed is " + FEWEST + " to " + MOST);
        }
    }

    int scouts(int points) {
        return Math.max(FEWEST_SCOUTS, SCOUTS * points);
    }

    int chambers(int points) {
        return Math.max(FEWEST_CHAMBERS, CHAMBERS * points);
    }

    /**
     * Points of a kind, as far as a first answer leaves it probable: what is improbable weighs little in the answer, however well it is known.
     *
     * @param share probability over that of the most probable kind, as much as the first answer allows (-)
     */
    int points(double share) {
        return Math.max(FEWEST, (int) Math.ceil(samples * Math.min(1, share)));
    }

    /** Points of a first answer; none where the whole is hardly more. */
    int rough() {
        return samples >= ROUGH * FEWEST ? FEWEST : 0;
    }

    /**
     * Points of a kind where a claim is left out.
     *
     * @param share probability over that of the most probable kind (-)
     */
    int leftOut(double share) {
        return (int) Math.ceil(Math.max(FEWEST_LEFT_OUT, share * Math.max(FEWEST, samples / 3.0)));
    }

    int prior() {
        return Math.max(LEARNT, samples / 2);
    }
}
