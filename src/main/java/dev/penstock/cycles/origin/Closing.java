package dev.penstock.cycles.origin;

import dev.penstock.provenance.Trail;

/**
 * The loop that closes a balance, as an entry of its own: what the solver found depends on it, and it depends on every
 * term of every equation.
 */
public final class Closing {

    private static final String TABLE = "closing.";

    /** Path of the loop as a whole. */
    public static final String LOOP = TABLE + "loop";

    private Closing() {}

    /**
     * @param unknown name of a number that the solver found
     * @return its path
     */
    public static String path(String unknown) {
        return TABLE + Trail.slug(unknown);
    }
}
