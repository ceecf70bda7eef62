package dev.penstock.chamber.contour;

import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Wall angles of the parabola that comes close to Rao's optimum contour: at the inflection, where the throat arc ends, and
 * at the exit, by area ratio and by length as a fraction of a 15° cone.
 *
 * <p>The published chart [rao-1960], reprinted in [nasa-sp-125] figure 4-16, read into a table; linear in ln(area ratio) and
 * in the length fraction between readings. Range of the chart: area ratio 4 to 100, length 0.6 to 0.9; outside it the
 * nearest readings are extended and the result carries a warning. Reading uncertainty about 1°, which moves the divergence
 * efficiency by less than 0.2 %. The readings are from memory of the chart; the sample in [nasa-sp-125] (area ratio 14,
 * length 0.8: 27.4° and 9.8°) checks them.
 */
public final class RaoAngles {

    public static final ModelCard CARD = new ModelCard(
            "chamber.rao_angles",
            "Wall angles of a parabolic bell",
            "θ_n, θ_e = chart(ε, L/L_15°cone)",
            "area ratio 4 to 100, length fraction 0.6 to 0.9",
            "about 1° of reading",
            List.of("rao-1960", "nasa-sp-125"));

    private static final double[] AREA_RATIO = {4, 5, 10, 20, 30, 40, 50, 100};
    private static final double[] LENGTH = {0.6, 0.8, 0.9};
    private static final double[][] INFLECTION = {
        {26.5, 28.0, 32.0, 35.0, 36.2, 37.1, 37.8, 40.0},
        {21.5, 23.0, 26.3, 28.8, 30.0, 31.0, 31.5, 33.5},
        {20.0, 21.0, 24.0, 27.0, 28.5, 29.5, 30.2, 32.0}
    };
    private static final double[][] EXIT = {
        {20.5, 20.0, 16.0, 14.5, 14.0, 13.5, 13.0, 11.2},
        {14.0, 13.0, 11.0, 9.0, 8.5, 8.0, 7.5, 7.0},
        {11.5, 10.5, 8.0, 7.0, 6.5, 6.2, 6.0, 6.0}
    };

    /**
     * The two angles.
     *
     * @param inflection wall angle where the parabola leaves the throat arc (rad)
     * @param exit wall angle at the exit (rad)
     * @param warning present outside the chart
     */
    public record Angles(double inflection, double exit, Optional<Warning> warning) {}

    private RaoAngles() {}

    /**
     * @param areaRatio exit area over throat area (-), above 1
     * @param lengthFraction length over that of a 15° cone (-), 0.5 to 1.2
     * @return the angles
     * @throws dev.penstock.errors.OutsideValidity if an argument is outside these bounds
     */
    public static Angles of(double areaRatio, double lengthFraction) {
        Require.within(CARD.title(), "area ratio (-)", areaRatio, 1, 1e4);
        Require.within(CARD.title(), "length fraction (-)", lengthFraction, 0.5, 1.2);
        double low = AREA_RATIO[0];
        double high = AREA_RATIO[AREA_RATIO.length - 1];
        // Beyond the chart both angles level off; the end readings are kept.
        double ratio = Math.min(high, Math.max(low, areaRatio));
        double inflection = read(INFLECTION, ratio, lengthFraction);
        double exit = Math.max(1, read(EXIT, ratio, lengthFraction));
        boolean outside = areaRatio < low || areaRatio > high || lengthFraction < 0.6 || lengthFraction > 0.9;
        Optional<Warning> warning = outside
                ? Optional.of(new Warning(
                        CARD.id(),
                        String.format(
                                Locale.ROOT,
                                "bell angles for area ratio %.4g and length fraction %.3g are extended from the ends of "
                                        + "the chart (%s)",
                                areaRatio,
                                lengthFraction,
                                CARD.range())))
                : Optional.empty();
        return new Angles(Math.toRadians(inflection), Math.toRadians(exit), warning);
    }

    private static double read(double[][] table, double areaRatio, double length) {
        int i = Math.min(interval(AREA_RATIO, areaRatio), AREA_RATIO.length - 2);
        double t = Math.log(areaRatio / AREA_RATIO[i]) / Math.log(AREA_RATIO[i + 1] / AREA_RATIO[i]);
        int j = Math.min(interval(LENGTH, length), LENGTH.length - 2);
        double u = (length - LENGTH[j]) / (LENGTH[j + 1] - LENGTH[j]);
        double a = table[j][i] + t * (table[j][i + 1] - table[j][i]);
        double b = table[j + 1][i] + t * (table[j + 1][i + 1] - table[j + 1][i]);
        return a + u * (b - a);
    }

    private static int interval(double[] grid, double x) {
        int i = 0;
        while (i < grid.length - 2 && x >= grid[i + 1]) {
            i++;
        }
        return i;
    }
}
