package dev.penstock.numerics.design;

/** Numbers that look random and follow from what goes in (the finalizer of SplitMix64, Steele, Lea and Flood 2014). */
final class Hash {

    private static final long GOLDEN = 0x9e3779b97f4a7c15L;
    private static final double UNIT = 0x1p-53;

    private Hash() {}

    static long of(long key, long value) {
        long z = key + GOLDEN * (value + 1);
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }

    /** A number in [0, 1). */
    static double share(long key, long value) {
        return (of(key, value) >>> 11) * UNIT;
    }
}
