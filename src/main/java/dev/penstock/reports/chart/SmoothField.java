package dev.penstock.reports.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * A figure over two inputs, known on a rectangular grid, made smooth in between: cubic pieces along each input that rise and
 * fall only where the values on the grid do, so that nothing is drawn that no value has. A cell with a corner that has no
 * value stays empty. Immutable.
 *
 * <p>Source of the slopes: F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic
 * interpolants, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304; from memory.
 */
public final class SmoothField {

    /** About as many fine cells along each input. */
    private static final int FINE = 48;

    private final double[] xs;
    private final double[] ys;
    /** Values by row and column; NaN where there is none. */
    private final double[][] values;

    private SmoothField(double[] xs, double[] ys, double[][] values) {
        this.xs = xs;
        this.ys = ys;
        this.values = values;
    }

    /**
     * @param xs horizontal places, rising; at least two
     * @param ys vertical places, rising; at least two
     * @param known values, first by vertical, then by horizontal place; NaN where there is none
     * @return the field through these
     */
    public static SmoothField through(double[] xs, double[] ys, double[][] known) {
        double[] fineXs = finer(xs);
        double[] fineYs = finer(ys);
        double[][] rows = new double[ys.length][];
        for (int j = 0; j < ys.length; j++) {
            rows[j] = along(xs, known[j], fineXs);
        }
        double[][] values = new double[fineYs.length][fineXs.length];
        double[] column = new double[ys.length];
        for (int i = 0; i < fineXs.length; i++) {
            for (int j = 0; j < ys.length; j++) {
                column[j] = rows[j][i];
            }
            double[] fine = along(ys, column, fineYs);
            for (int j = 0; j < fine.length; j++) {
                values[j][i] = fine[j];
            }
        }
        return new SmoothField(fineXs, fineYs, values);
    }

    private static double[] finer(double[] places) {
        int parts = Math.max(1, (int) Math.ceil((double) FINE / (places.length - 1)));
        double[] fine = new double[(places.length - 1) * parts + 1];
        for (int i = 0; i + 1 < places.length; i++) {
            for (int k = 0; k < parts; k++) {
                fine[i * parts + k] = places[i] + (places[i + 1] - places[i]) * k / parts;
            }
        }
        fine[fine.length - 1] = places[places.length - 1];
        return fine;
    }

    /** A row of values at finer places; none in a piece whose ends do not both have one. */
    private static double[] along(double[] at, double[] known, double[] fine) {
        double[] slopes = slopes(at, known);
        double[] out = new double[fine.length];
        int i = 0;
        for (int k = 0; k < fine.length; k++) {
            while (i + 2 < at.length && fine[k] >= at[i + 1]) {
                i++;
            }
            if (fine[k] == at[i]) {
                out[k] = known[i];
                continue;
            }
            double h = at[i + 1] - at[i];
            double t = (fine[k] - at[i]) / h;
            double u = 1 - t;
            out[k] = t == 1
                    ? known[i + 1]
                    : u * u * (1 + 2 * t) * known[i]
                            + t * t * (3 - 2 * t) * known[i + 1]
                            + h * t * u * (u * slopes[i] - t * slopes[i + 1]);
        }
        return out;
    }

    private static double[] slopes(double[] at, double[] known) {
        double[] slopes = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            double left = i == 0 ? Double.NaN : (known[i] - known[i - 1]) / (at[i] - at[i - 1]);
            double right = i + 1 == at.length ? Double.NaN : (known[i + 1] - known[i]) / (at[i + 1] - at[i]);
            if (Double.isNaN(left) || Double.isNaN(right)) {
                slopes[i] = Double.isNaN(left) ? Double.isNaN(right) ? 0 : right : left;
            } else if (left * right > 0) {
                double before = at[i] - at[i - 1];
                double after = at[i + 1] - at[i];
                double share = (before + 2 * after) / (3 * (before + after));
                slopes[i] = left * right / (share * right + (1 - share) * left);
            }
        }
        return slopes;
    }

    /** @return lowest and highest value; infinite, the wrong way round, without any */
    public double[] range() {
        DoubleSummaryStatistics all = Arrays.stream(values)
                .flatMapToDouble(Arrays::stream)
                .filter(v -> !Double.isNaN(v))
                .summaryStatistics();
        return new double[] {all.getMin(), all.getMax()};
    }

    double left() {
        return xs[0];
    }

    double right() {
        return xs[xs.length - 1];
    }

    double bottom() {
        return ys[0];
    }

    double top() {
        return ys[ys.length - 1];
    }

    /** @return whether any place has no value */
    boolean hasGaps() {
        return Arrays.stream(values).flatMapToDouble(Arrays::stream).anyMatch(Double::isNaN);
    }

    /**
     * @param level level
     * @return its lines, each as the places it runs through
     */
    public List<List<Curve.Point>> at(double level) {
        Contours contours = new Contours(boxed(xs), boxed(ys));
        for (int j = 0; j < ys.length; j++) {
            for (int i = 0; i < xs.length; i++) {
                contours.put(xs[i], ys[j], values[j][i]);
            }
        }
        return contours.at(level);
    }

    private static List<Double> boxed(double[] places) {
        return Arrays.stream(places).boxed().toList();
    }

    /**
     * @param level level; minus infinity for wherever there is a value
     * @return where the field is at least that, as polygons that touch and do not overlap
     */
    List<List<Curve.Point>> above(double level) {
        List<List<Curve.Point>> polygons = new ArrayList<>();
        for (int j = 0; j + 1 < ys.length; j++) {
            int from = -1;
            for (int i = 0; i + 1 < xs.length; i++) {
                int side = side(i, j, level);
                if (side > 0 && from < 0) {
                    from = i;
                }
                if (side <= 0 && from >= 0) {
                    polygons.add(box(from, i, j));
                    from = -1;
                }
                if (side == 0) {
                    polygons.addAll(cut(i, j, level));
                }
            }
            if (from >= 0) {
                polygons.add(box(from, xs.length - 1, j));
            }
        }
        return polygons;
    }

    /** @return where the field is below a level, as polygons that touch and do not overlap */
    List<List<Curve.Point>> below(double level) {
        double[][] turned = new double[values.length][];
        for (int j = 0; j < values.length; j++) {
            turned[j] = Arrays.stream(values[j]).map(v -> -v).toArray();
        }
        return new SmoothField(xs, ys, turned).above(-level);
    }

    /** +1 where all of a cell is above, −1 where nothing is or a corner has no value, 0 in between. */
    private int side(int i, int j, double level) {
        double least =
                Math.min(Math.min(values[j][i], values[j][i + 1]), Math.min(values[j + 1][i], values[j + 1][i + 1]));
        double most =
                Math.max(Math.max(values[j][i], values[j][i + 1]), Math.max(values[j + 1][i], values[j + 1][i + 1]));
        return Double.isNaN(least) || most < level ? -1 : least >= level ? 1 : 0;
    }

    private List<Curve.Point> box(int from, int to, int j) {
        return List.of(
                new Curve.Point(xs[from], ys[j]),
                new Curve.Point(xs[to], ys[j]),
                new Curve.Point(xs[to], ys[j + 1]),
                new Curve.Point(xs[from], ys[j + 1]));
    }

    /** The part of a cell that is above, taken as linear in each half of it. */
    private List<List<Curve.Point>> cut(int i, int j, double level) {
        int[][] a = {{i, j}, {i + 1, j}, {i + 1, j + 1}};
        int[][] b = {{i, j}, {i + 1, j + 1}, {i, j + 1}};
        List<List<Curve.Point>> parts = new ArrayList<>();
        for (int[][] half : List.of(a, b)) {
            List<Curve.Point> part = new ArrayList<>();
            for (int k = 0; k < half.length; k++) {
                int[] p = half[k];
                int[] q = half[(k + 1) % half.length];
                double from = values[p[1]][p[0]] - level;
                double to = values[q[1]][q[0]] - level;
                if (from >= 0) {
                    part.add(new Curve.Point(xs[p[0]], ys[p[1]]));
                }
                if (from >= 0 != to >= 0) {
                    double share = from / (from - to);
                    part.add(new Curve.Point(
                            xs[p[0]] + share * (xs[q[0]] - xs[p[0]]), ys[p[1]] + share * (ys[q[1]] - ys[p[1]])));
                }
            }
            if (part.size() > 2) {
                parts.add(part);
            }
        }
        return parts;
    }
}
