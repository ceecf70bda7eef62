package dev.penstock.numerics.design;

/**
 * A reordering of 0 to n − 1 that needs no table: a Feistel network over the next power of four, walked until it is inside
 * (cycle walking; Black and Rogaway 2002).
 */
public final class Permutation {

    private static final int ROUNDS = 6;

    private final int size;
    private final int half;
    private final long mask;
    private final long key;

    /**
     * @param size number of places, 1 or more
     * @param key chooses the order
     */
    public Permutation(int size, long key) {
        if (size < 1) {
            throw new IllegalArgumentException("a permutation of " + size);
        }
        this.size = size;
        int bits = Math.max(2, 32 - Integer.numberOfLeadingZeros(size - 1));
        this.half = (bits + 1) / 2;
        this.mask = (1L << half) - 1;
        this.key = key;
    }

    /**
     * @param index 0 to n − 1
     * @return its place, 0 to n − 1; no two have the same
     */
    public int at(int index) {
        if (index < 0 || index >= size) {
            throw new IndexOutOfBoundsException(index + " of " + size);
        }
        long value = index;
        do {
            value = scrambled(value);
        } while (value >= size);
        return (int) value;
    }

    private long scrambled(long value) {
        long left = value >>> half;
        long right = value & mask;
        for (int round = 0; round < ROUNDS; round++) {
            long next = left ^ (Hash.of(key + round, right) & mask);
            left = right;
            right = next;
        }
        return left << half | right;
    }
}
