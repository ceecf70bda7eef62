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
        double total = total();
        return total > 0 ? line.mass() / total : 0;
    }

    /** @return scatter of the sum, lines taken as independent (kg): root of the sum of squares */
    public double scatter() {
        double squares = 0;
        for (MassLine line : lines) {
            squares += Math.pow(line.scatter() * line.mass(), 2);
        }
        return Math.sqrt(squares);
    }
}
