package dev.penstock.numerics.sampling;

import java.util.SplittableRandom;

/**
 * Random numbers that depend on what they are for and on nothing else, so that no order of work and no number of threads
 * moves a bit.
 */
public final class Streams {

    /** 2⁶⁴ over the golden ratio, odd. */
    public static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final long seed;

    /** @param seed seed of all purposes */
    public Streams(long seed) {
        this.seed = seed;
    }

    /**
     * @param place what they are for: stage, sweep, particle ...
     * @return the random numbers of one purpose
     */
    public SplittableRandom of(long... place) {
        long state = mixed(seed + GOLDEN);
        for (long part : place) {
            state = mixed(state ^ mixed(part + GOLDEN));
        }
        return new SplittableRandom(state);
    }

    /**
     * @param value any number
     * @return it through the finaliser of a 64-bit hash: every bit of the input moves about half of the output
     */
    public static long mixed(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
