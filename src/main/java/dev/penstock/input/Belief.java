package dev.penstock.input;

/**
 * Where a number lies of which nothing is known: what the trade builds. What a study of many engines starts from; no calculation
 * uses it.
 *
 * @param low lowest value, or the 5th percentile, in the unit of the reference
 * @param high highest value, or the 95th percentile, in the unit of the reference
 * @param shape how it lies between and beyond the two
 * @param reference what the two are given in
 * @param source where they come from
 */
public record Belief(double low, double high, Shape shape, Reference reference, String source) {

    /** What a belief is given in. */
    public enum Reference {
        /** the unit of the input, SI */
        ITSELF,
        /** the mixture ratio at which oxygen just suffices */
        STOICHIOMETRIC
    }

    /** How a number lies. */
    public enum Shape {
        /** every difference between two ends alike */
        DIFFERENCES,
        /** every factor between two ends alike */
        FACTORS,
        /** its logarithm is normal; nine of ten values lie between the two */
        MOSTLY
    }

    public Belief {
        if (!(low < high) || shape != Shape.DIFFERENCES && !(low > 0)) {
            throw new IllegalArgumentException("a belief needs a low below its high: " + low + ", " + high);
        }
    }

    /**
     * @param low lowest value, SI
     * @param high highest value, SI
     * @return factors equally likely between the two: common practice, no source
     */
    public static Belief factors(double low, double high) {
        return new Belief(low, high, Shape.FACTORS, Reference.ITSELF, Usual.COMMON);
    }

    /**
     * @param low lowest value, SI
     * @param high highest value, SI
     * @return differences equally likely between the two: common practice, no source
     */
    public static Belief differences(double low, double high) {
        return new Belief(low, high, Shape.DIFFERENCES, Reference.ITSELF, Usual.COMMON);
    }

    /**
     * @param low 5th percentile, SI
     * @param high 95th percentile, SI
     * @param source where they come from
     * @return a normal logarithm with nine of ten values between the two
     */
    public static Belief mostly(double low, double high, String source) {
        return new Belief(low, high, Shape.MOSTLY, Reference.ITSELF, source);
    }

    /** @return whether factors are what is believed, not differences */
    public boolean factors() {
        return shape != Shape.DIFFERENCES;
    }

    /** @return the same, given in parts of the stoichiometric mixture ratio */
    public Belief ofStoichiometric() {
        return new Belief(low, high, shape, Reference.STOICHIOMETRIC, source);
    }
}
