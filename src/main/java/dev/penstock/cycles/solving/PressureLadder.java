package dev.penstock.cycles.solving;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Chamber pressures at which a balance is sought by its first guess. They do not depend on the pressure that is asked for, so that
 * two questions about one engine ask the same ones; all have few digits, so that a sentence can name them as they were asked.
 * <pre>
 * p = 1 MPa · 1.5^k,   in quarters of k where a gap is searched
 * </pre>
 */
final class PressureLadder {

    private static final double UNIT = 1e6;
    private static final double RUNG = Math.log(1.5);

    /** Lowest rung (Pa): one for all, so that no rung that was tried in vain has further ones below it. */
    private static final double LOWEST = 0.1e6;

    /** Highest rung over the pressure asked for (-). */
    private static final double HIGHEST_SHARE = 2;

    private static final int BETWEEN = 4;
    private static final String DIGITS = "%.4g";

    private PressureLadder() {}

    /**
     * @param target pressure asked for (Pa)
     * @return rungs around it, the nearest first (Pa)
     */
    static List<Double> around(double target) {
        List<Double> rungs = new ArrayList<>();
        int low = (int) Math.ceil(Math.log(LOWEST / UNIT) / RUNG);
        int high = (int) Math.floor(Math.log(HIGHEST_SHARE * target / UNIT) / RUNG);
        for (int k = low; k <= high; k++) {
            rungs.add(rung(k));
        }
        rungs.sort(Comparator.comparingDouble(p -> Math.abs(Math.log(p / target))));
        return rungs;
    }

    /**
     * @param low pressure (Pa)
     * @param high pressure (Pa)
     * @return quarter rungs between the two, the highest first (Pa)
     */
    static List<Double> between(double low, double high) {
        List<Double> pressures = new ArrayList<>();
        int quarter = (int) Math.ceil(Math.log(high / UNIT) / RUNG * BETWEEN);
        for (double p = rung((double) quarter / BETWEEN); p > low; p = rung((double) --quarter / BETWEEN)) {
            if (p < high) {
                pressures.add(p);
            }
        }
        return pressures;
    }

    /** @return a pressure with as many digits as sentences show (Pa) */
    static double shown(double pressure) {
        return Double.parseDouble(String.format(Locale.ROOT, DIGITS, pressure));
    }

    private static double rung(double k) {
        return shown(UNIT * Math.exp(k * RUNG));
    }
}
