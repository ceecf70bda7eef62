package dev.penstock.numerics.design;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points of Sobol's sequence (Commons Math, directions of Joe and Kuo), their digits permuted as Owen 1995 does: each binary
 * digit is flipped or not by the digits above it, which keeps how evenly the points fill the cube and takes away their
 * pattern. Another seed gives points that are as good and independent.
 */
public final class ScrambledSobol implements UnitDesign {

    /** What the points are. */
    public static final ModelCard CARD = new ModelCard(
            "numerics.design.scrambled-sobol",
            "Scrambled Sobol points",
            "digit k of x flipped by a random bit that belongs to digits 1 to k-1 (nested uniform scrambling)",
            "1 to 1000 coordinates; evenest where the number of points is a power of 2",
            "not stated; scrambled by another seed the points tell it",
            List.of("sobol-1967", "joe-kuo-2008", "owen-1995"));

    /** Digits that count: more than any number of points can tell apart. */
    private static final int DIGITS = 32;

    private static final double UNIT = 0x1p-32;

    private final int size;
    private final int dimensions;
    private final long seed;
    private final SobolSequenceGenerator sequence;
    private int next;

    /**
     * @param size number of points, 1 or more
     * @param dimensions number of coordinates, 1 to 1000
     * @param seed chooses the scrambling
     */
    public ScrambledSobol(int size, int dimensions, long seed) {
        this.size = size;
        this.dimensions = dimensions;
        this.seed = seed;
        this.sequence = new SobolSequenceGenerator(dimensions);
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public int dimensions() {
        return dimensions;
    }

    @Override
    public void point(int index, double[] point) {
        double[] plain = index == next ? sequence.nextVector() : sequence.skipTo(index);
        next = index + 1;
        for (int d = 0; d < dimensions; d++) {
            point[d] = scrambled((long) (plain[d] / UNIT), Hash.of(seed, d));
        }
    }

    /** The middle of the smallest interval that the digits tell, after each is flipped or not. */
    private static double scrambled(long digits, long key) {
        long flipped = 0;
        for (int k = 0; k < DIGITS; k++) {
            int place = DIGITS - 1 - k;
            // The digits above, with a leading one, so that 01 and 001 differ.
            long above = digits >>> (place + 1) | 1L << k;
            long bit = digits >>> place ^ Hash.of(key, above);
            flipped |= (bit & 1) << place;
        }
        return (flipped + 0.5) * UNIT;
    }
}
