package dev.penstock.vehicle.cost;

import dev.penstock.errors.Require;
import dev.penstock.provenance.Spread;

/**
 * What is asked of a cost.
 *
 * @param uses flights of a stage that comes back, from one
 * @param refurbishment effort between two flights over that of building the stage (-)
 * @param launchesPerYear launches of a year
 * @param years years of the run
 * @param learning slope of the learning curve (-)
 */
public record CostTerms(int uses, Spread refurbishment, double launchesPerYear, double years, double learning) {

    /** Share of refurbishment where none is stated, common practice, no source: no program published its own. */
    public static final double USUAL_REFURBISHMENT = 0.1;

    /** That share with its band. */
    public static final Spread REFURBISHMENT = new Spread(0.03, USUAL_REFURBISHMENT, 0.30);

    public static final int USES = 10;
    public static final int LAUNCHES_PER_YEAR = 10;
    public static final double YEARS = 10;

    /** Slope of aerospace production, from memory of the range 0.80 to 0.95. */
    public static final double LEARNING = 0.87;

    public CostTerms {
        Require.positive("cost", "uses (-)", uses);
        Require.positive("cost", "launches per year (-)", launchesPerYear);
        Require.positive("cost", "years (-)", years);
        Require.within("cost", "learning slope (-)", learning, 0.5, 1);
    }

    /** @return launches of the run */
    public double launches() {
        return Math.max(1, launchesPerYear * years);
    }

    /**
     * @param share share of refurbishment (-)
     * @return the same with exactly that
     */
    CostTerms withRefurbishment(double share) {
        return new CostTerms(uses, Spread.exactly(share), launchesPerYear, years, learning);
    }

    /**
     * @param rate launches of a year (-)
     * @return the same with that
     */
    public CostTerms withLaunchesPerYear(double rate) {
        return new CostTerms(uses, refurbishment, rate, years, learning);
    }

    /**
     * @param other number of flights of a stage
     * @return the same with that
     */
    public CostTerms withUses(int other) {
        return new CostTerms(other, refurbishment, launchesPerYear, years, learning);
    }
}
