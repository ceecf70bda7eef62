package dev.penstock.chamber.contour;

import dev.penstock.errors.Require;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Table of {@link TwoDimensionalFlow} over the bells that {@link ContourBuilder} draws, with throat curvatures 1.5 and 0.382:
 * efficiency, and pressure at the wall's end over the one-dimensional exit pressure, by area ratio, length fraction and
 * isentropic exponent. The table is data written by this package's own
 * solver ({@code BellTableWriter} among the tests); a test computes entries again. Linear between entries in ln ε, length and γ; kept constant
 * beyond them.
 */
public final class BellTable {

    static final double[] AREA_RATIO = {1.5, 2, 3, 4, 6, 10, 16, 25, 40, 60, 100, 200, 400};
    static final double[] LENGTH = {0.6, 0.7, 0.8, 0.9, 1.0};
    static final double[] GAMMA = {1.10, 1.18, 1.26, 1.34};
    private static final String RESOURCE = "bell-table.csv";

    private static final int SIZE = AREA_RATIO.length * LENGTH.length * GAMMA.length;

    private static final BellTable TABLE = new BellTable();

    private final double[] efficiency = new double[SIZE];
    private final double[] wallPressure = new double[SIZE];

    private BellTable() {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(BellTable.class.getResourceAsStream(RESOURCE), StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().skip(1).toList();
            for (int i = 0; i < SIZE; i++) {
                String[] cells = lines.get(i).split(",");
                efficiency[i] = Require.within(RESOURCE, "efficiency (-)", Double.parseDouble(cells[3]), 0.5, 1);
                wallPressure[i] = Require.within(RESOURCE, "pressure ratio (-)", Double.parseDouble(cells[4]), 0.3, 9);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * @param areaRatio exit area over throat area (-)
     * @param length length over that of a 15° cone (-)
     * @param gamma isentropic exponent (-)
     * @return vacuum impulse over that of one-dimensional flow (-)
     */
    public static double efficiency(double areaRatio, double length, double gamma) {
        return interpolate(TABLE.efficiency, areaRatio, length, gamma);
    }

    /**
     * @param areaRatio exit area over throat area (-)
     * @param length length over that of a 15° cone (-)
     * @param gamma isentropic exponent (-)
     * @return pressure at the wall's end over the pressure of one-dimensional flow there (-)
     */
    public static double exitWallPressure(double areaRatio, double length, double gamma) {
        return interpolate(TABLE.wallPressure, areaRatio, length, gamma);
    }

    private static double interpolate(double[] values, double areaRatio, double length, double gamma) {
        double a = position(AREA_RATIO, areaRatio, true);
        double b = position(LENGTH, length, false);
        double c = position(GAMMA, gamma, false);
        int i = (int) Math.min(a, AREA_RATIO.length - 2.0);
        int j = (int) Math.min(b, LENGTH.length - 2.0);
        int k = (int) Math.min(c, GAMMA.length - 2.0);
        double sum = 0;
        for (int corner = 0; corner < 8; corner++) {
            int di = corner & 1;
            int dj = corner >> 1 & 1;
            int dk = corner >> 2;
            double weight =
                    (di == 1 ? a - i : 1 - a + i) * (dj == 1 ? b - j : 1 - b + j) * (dk == 1 ? c - k : 1 - c + k);
            sum += weight * values[((i + di) * LENGTH.length + j + dj) * GAMMA.length + k + dk];
        }
        return sum;
    }

    /** Fractional index of a value in a rising grid, kept within it. */
    private static double position(double[] grid, double x, boolean logarithmic) {
        double kept = Math.max(grid[0], Math.min(grid[grid.length - 1], x));
        int i = 0;
        while (i < grid.length - 2 && kept >= grid[i + 1]) {
            i++;
        }
        return i
                + (logarithmic
                        ? Math.log(kept / grid[i]) / Math.log(grid[i + 1] / grid[i])
                        : (kept - grid[i]) / (grid[i + 1] - grid[i]));
    }
}
