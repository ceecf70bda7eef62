package dev.penstock.input;

/**
 * Where a number lies of which nothing is known: what the trade builds, from its smallest to its largest, every value between
 * as likely as any other. What a study of many engines starts from; no calculation uses it.
 *
 * @param low lowest value, in the unit of the reference
 * @param high highest value, in the unit of the reference
 * @param logarithmic whether factors are equally likely, not differences
 * @param reference what the two are given in
 * @param source where they come from
 */
public record Belief(double low, double high, boolean logarithmic, Reference reference, String source) {

    /** What a belief is given in. */
    public enum Reference {
        /** the unit of the input, SI */
        ITSELF,
        /** the mixture ratio at which oxygen just suffices */
        STOICHIOMETRIC
    }

    public Belief {
        if (!(low < high) || logarithmic && !(low > 0)) {
            throw new IllegalArgumentException("a belief needs a low below its high: " + low + ", " + high);
        }
    }

    /**
     * @param low lowest value, SI
     * @param high highest value, SI
     * @return factors equally likely between the two: common practice, no source
     */
    public static Belief factors(double low, double high) {
        return new Belief(low, high, true, Reference.ITSELF, Usual.COMMON);
    }

    /**
     * @param low lowest value, SI
     * @param high highest value, SI
     * @return differences equally likely between the two: common practice, no source
     */
    public static Belief differences(double low, double high) {
        return new Belief(low, high, false, Reference.ITSELF, Usual.COMMON);
    }

    /** @return the same, given in parts of the stoichiometric mixture ratio */
    public Belief ofStoichiometric() {
        return new Belief(low, high, logarithmic, Reference.STOICHIOMETRIC, source);
    }
}
