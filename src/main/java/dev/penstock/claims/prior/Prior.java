package dev.penstock.claims.prior;

import dev.penstock.claims.file.Claim;
import dev.penstock.input.Belief;
import dev.penstock.provenance.Scatter;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Range;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * What is believed of a number before any claim is heard. A point of the standard normal space has its value by the
 * cumulative distribution.
 */
public sealed interface Prior {

    /**
     * @param normal coordinate in the standard normal space
     * @param model value that the calculation finds by itself, SI; of use to {@link About} alone
     * @return the value there, SI
     */
    double value(double normal, double model);

    /** @return where it comes from */
    String source();

    /**
     * @param normal coordinate in the standard normal space
     * @return where that lies between −1 and 1, in a coordinate in which values or their logarithms are about straight
     */
    default double place(double normal) {
        return 2 * probability(normal) - 1;
    }

    /** @return whether values lie about one that the calculation finds */
    default boolean aboutModel() {
        return false;
    }

    private static double probability(double normal) {
        return new NormalDistribution(null, 0, 1).cumulativeProbability(normal);
    }

    /**
     * Every value, or every factor, between two ends alike.
     *
     * @param low lowest value, SI
     * @param high highest value, SI
     * @param logarithmic whether factors are alike
     * @param source where it comes from
     */
    record Even(double low, double high, boolean logarithmic, String source) implements Prior {

        @Override
        public double value(double normal, double model) {
            double share = probability(normal);
            return logarithmic ? low * Math.pow(high / low, share) : low + share * (high - low);
        }
    }

    /**
     * A normal logarithm.
     *
     * @param p05 5th percentile, SI
     * @param p95 95th percentile, SI
     * @param source where it comes from
     */
    record Mostly(double p05, double p95, String source) implements Prior {

        @Override
        public double value(double normal, double model) {
            return Math.sqrt(p05 * p95) * Math.pow(p95 / p05, 0.5 * place(normal));
        }

        /** Beyond one in one case of ten: of probabilities nine tenths would be as good as one. */
        @Override
        public double place(double normal) {
            return normal / Claim.NINETY;
        }
    }

    /**
     * A triangle between two ends.
     *
     * @param spread the triangle, SI
     * @param source where it comes from
     */
    record Triangle(Spread spread, String source) implements Prior {

        @Override
        public double value(double normal, double model) {
            return spread.quantile(probability(normal));
        }
    }

    /**
     * A triangle about the value that the calculation finds by itself.
     *
     * @param scatter how far off that may be
     * @param range what is allowed, SI
     * @param source where it comes from
     */
    record About(Scatter scatter, Range range, String source) implements Prior {

        @Override
        public double value(double normal, double model) {
            return scatter.around(model, range.low(), range.high()).quantile(probability(normal));
        }

        @Override
        public boolean aboutModel() {
            return true;
        }
    }

    /**
     * @param belief belief of a declaration
     * @param stoichiometric mixture ratio at which oxygen just suffices (-)
     * @return the prior
     */
    static Prior of(Belief belief, double stoichiometric) {
        double unit = belief.reference() == Belief.Reference.STOICHIOMETRIC ? stoichiometric : 1;
        double low = belief.low() * unit;
        double high = belief.high() * unit;
        return belief.shape() == Belief.Shape.MOSTLY
                ? new Mostly(low, high, belief.source())
                : new Even(low, high, belief.factors(), belief.source());
    }

    /**
     * @param range what a declaration allows
     * @return every factor alike where the range spans more than one ten, every value otherwise
     */
    static Prior of(Range range) {
        boolean wide = range.low() > 0 && range.high() > 10 * range.low();
        return new Even(range.low(), range.high(), wide, "range of the declaration");
    }
}
