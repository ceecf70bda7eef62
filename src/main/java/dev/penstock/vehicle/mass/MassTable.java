package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * Dry mass of a stage, line by line, with the growth that experience adds to an early estimate.
 *
 * @param lines the lines, largest groups first
 * @param growthMargin growth as a fraction of the sum of the lines that are estimated (-): what is stated does not grow
 */
public record MassTable(List<MassLine> lines, double growthMargin) {

    /**
     * Spread (-) that moves all estimated lines of a stage together: that of fifteen flown stages about their estimates, less what
     * independent lines explain (docs/validation/vehicle.md, which shows it with each of them left out).
     */
    public static final double COMMON = 0.18;

    public MassTable {
        lines = List.copyOf(lines);
        Require.within("mass table", "growth margin (-)", growthMargin, 0, 2);
    }

    /** @return sum of the lines (kg) */
    public double estimated() {
        double sum = 0;
        for (MassLine line : lines) {
            sum += line.mass();
        }
        return sum;
    }

    /** @return growth margin (kg) */
    public double growth() {
        double sum = 0;
        for (MassLine line : lines) {
            sum += line.stated() ? 0 : line.mass();
        }
        return growthMargin * sum;
    }

    /** @return dry mass, growth included (kg) */
    public double total() {
        return estimated() + growth();
    }

    /**
     * @param line a line of this table
     * @return its share of the total (-)
     */
    public double share(MassLine line) {
        return share(line.mass());
    }

    /**
     * @param mass a part of this table, or its scatter (kg)
     * @return its share of the total (-); none of a table that weighs nothing
     */
    public double share(double mass) {
        double total = total();
        return total > 0 ? mass / total : 0;
    }

    /**
     * Scatter of the sum (kg): what lines taken as independent give, and beside it what flown stages show that moves all estimated
     * lines together.
     *
     * @return √(Σ(s_i m_i)² + ({@link #COMMON} Σm)²) over what is estimated
     */
    public double scatter() {
        return Math.hypot(independentScatter(), COMMON * (total() - statedMass()));
    }

    private double statedMass() {
        double sum = 0;
        for (MassLine line : lines) {
            sum += line.stated() ? line.mass() : 0;
        }
        return sum;
    }

    /** @return scatter of the sum if lines were independent of each other (kg): root of the sum of squares */
    public double independentScatter() {
        double squares = 0;
        for (MassLine line : lines) {
            squares += Math.pow(line.scatter() * line.mass(), 2);
        }
        return Math.sqrt(squares);
    }
}
