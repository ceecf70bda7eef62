package dev.penstock.vehicle.cost;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Effort falls with the number built: by a fixed share with each doubling.
 * <pre>
 * unit n, Crawford          c_n = c_1 n^b            b = log2 p
 * average of N, Wright      c̄_N = c_1 N^b
 * average of N, from units  c̄_N = (c_1/N) Σ n^b
 * </pre>
 * Source: [wright-1936], from memory; the reading by units is known by the name of Crawford (1947), from memory. Holds for a
 * run without breaks and without changes.
 *
 * @param slope effort of the doubled number over that of the number (-), p
 */
public record LearningCurve(double slope) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "vehicle.learning-curve",
            "Learning curve by units",
            "c_n = c_1 n^b, b = log2 p; average over N units",
            "a run without breaks or changes, p 0.7 to 1",
            "p 0.80 to 0.95 in aerospace, from memory",
            List.of("wright-1936"));

    public LearningCurve {
        Require.within("learning curve", "slope (-)", slope, 0.5, 1);
    }

    private double exponent() {
        return Math.log(slope) / Math.log(2);
    }

    /**
     * @param number number of the unit, from one
     * @return its effort over that of the first (-), by Crawford
     */
    public double unit(double number) {
        return Math.pow(number, exponent());
    }

    /**
     * @param count number of units
     * @return their average effort over that of the first (-), by Wright
     */
    public double wrightAverage(double count) {
        return Math.pow(count, exponent());
    }

    /**
     * @param count number of units, one or more; a broken one counts by its share
     * @return their average effort over that of the first (-), the units by Crawford
     */
    public double average(double count) {
        Require.within("learning curve", "number of units (-)", count, 1, 1e6);
        double sum = 0;
        int whole = (int) count;
        for (int n = 1; n <= whole; n++) {
            sum += unit(n);
        }
        return (sum + (count - whole) * unit(whole + 1.0)) / count;
    }
}
