package dev.penstock.numerics.design;

import dev.penstock.numerics.sampling.Streams;

/** Numbers that look random and follow from what goes in (the finalizer of SplitMix64, Steele, Lea and Flood 2014). */
final class Hash {

    private static final double UNIT = 0x1p-53;

    private Hash() {}

    static long of(long key, long value) {
        return Streams.mixed(key + Streams.GOLDEN * (value + 1));
    }

    /** A number in [0, 1). */
    static double share(long key, long value) {
        return (of(key, value) >>> 11) * UNIT;
    }
}
