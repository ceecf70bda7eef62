package dev.penstock.numerics.variance;

import dev.penstock.numerics.LowDiscrepancy;
import dev.penstock.numerics.sampling.Streams;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * Shares of a function's variance: what is gone if one coordinate is known (first), and what stays if all others are (total).
 * <pre>S_i = Σ f(B) (f(A_B^i) − f(A)) / (N V),  T_i = Σ (f(A) − f(A_B^i))² / (2 N V)</pre>
 * A and B are the two halves of the points of Sobol's sequence in twice the dimensions, A_B^i is A with its coordinate i from
 * B. The points are shifted at random several times; the mean of the shifts is the answer, their deviation over the root of
 * their number its standard error. Rows in which any of the three has no value count for nothing.
 */
public final class SobolIndices {

    public static final ModelCard CARD = new ModelCard(
            "numerics.sobol-indices",
            "First-order and total indices of variance",
            "S_i = mean(f(B)(f(A_B^i) - f(A)))/V, T_i = mean((f(A) - f(A_B^i))^2)/(2V)",
            "independent inputs; of a function with gaps the indices are those of where it has values",
            "standard error from random shifts of the sequence",
            List.of("saltelli-2010", "jansen-1999", "sobol-1967"));

    /** Random shifts of the sequence. */
    public static final int SHIFTS = 8;

    /**
     * Indices of one coordinate.
     *
     * @param first share that is gone if it is known (-)
     * @param firstError standard error of that
     * @param total share that stays if all others are known (-)
     * @param totalError standard error of that
     */
    public record Index(double first, double firstError, double total, double totalError) {}

    /**
     * Indices of one function.
     *
     * @param mean its mean
     * @param deviation its standard deviation
     * @param share share of the points that have a value (-)
     * @param complete whether all points were asked
     * @param indices of each coordinate; NaN where it does not vary
     */
    public record Result(double mean, double deviation, double share, boolean complete, List<Index> indices) {

        public Result {
            indices = List.copyOf(indices);
        }
    }

    private SobolIndices() {}

    /**
     * @param dimensions number of coordinates
     * @param samples points of A in all; rounded up to a multiple of the shifts
     * @return places that are asked
     */
    public static int evaluations(int dimensions, int samples) {
        return rows(samples) * SHIFTS * (dimensions + 2);
    }

    private static int rows(int samples) {
        return Math.max(2, (samples + SHIFTS - 1) / SHIFTS);
    }

    /**
     * @param function functions to ask
     * @param dimensions number of coordinates
     * @param samples points of A in all
     * @param seed seed of the shifts
     * @param workers ask the functions
     * @return a result for each function
     */
    public static List<Result> of(Sampled function, int dimensions, int samples, long seed, Workers workers) {
        int rows = rows(samples);
        Streams streams = new Streams(seed);
        int block = dimensions + 2;
        double[][] values = new double[SHIFTS * rows * block][];
        List<double[]> points = new ArrayList<>();
        for (int s = 0; s < SHIFTS; s++) {
            points.addAll(LowDiscrepancy.shifted(2 * dimensions, rows, streams.of(s)));
        }
        // One that is stopped counts for nothing, like a place without a value, and for no share either.
        boolean complete = workers.untilStopped(
                values.length, k -> values[k] = function.at(place(points.get(k / block), dimensions, k % block)));
        int functions = Arrays.stream(values)
                .filter(v -> v != null)
                .mapToInt(v -> v.length)
                .findFirst()
                .orElseThrow(() -> new CancellationException("stopped before anything was found"));
        List<Result> results = new ArrayList<>();
        for (int f = 0; f < functions; f++) {
            results.add(result(values, f, dimensions, rows, complete));
        }
        return results;
    }

    /** A for 0, B for 1, A with coordinate i of B for 2 + i. */
    private static double[] place(double[] point, int dimensions, int which) {
        double[] place = new double[dimensions];
        for (int i = 0; i < dimensions; i++) {
            place[i] = point[which == 1 || which == 2 + i ? dimensions + i : i];
        }
        return place;
    }

    private static double value(double[] values, int f) {
        return values == null ? Double.NaN : values[f];
    }

    private static Result result(double[][] values, int f, int dimensions, int rows, boolean complete) {
        int block = dimensions + 2;
        double[] own = IntStream.range(0, 2 * SHIFTS * rows)
                .mapToDouble(k -> value(values[k / 2 * block + k % 2], f))
                .filter(Double::isFinite)
                .toArray();
        double mean = mean(own);
        double variance =
                Arrays.stream(own).map(v -> (v - mean) * (v - mean)).average().orElse(Double.NaN);
        List<Index> indices = new ArrayList<>();
        for (int i = 0; i < dimensions; i++) {
            indices.add(index(values, f, i, rows, block, mean, variance));
        }
        long asked = IntStream.range(0, 2 * SHIFTS * rows)
                .filter(k -> values[k / 2 * block + k % 2] != null)
                .count();
        return new Result(mean, Math.sqrt(variance), own.length / (double) asked, complete, indices);
    }

    private static Index index(double[][] values, int f, int i, int rows, int block, double mean, double variance) {
        double[] first = new double[SHIFTS];
        double[] total = new double[SHIFTS];
        for (int s = 0; s < SHIFTS; s++) {
            int number = 0;
            for (int row = s * rows; row < (s + 1) * rows; row++) {
                double a = value(values[row * block], f) - mean;
                double b = value(values[row * block + 1], f) - mean;
                double mixed = value(values[row * block + 2 + i], f) - mean;
                if (Double.isFinite(a + b + mixed)) {
                    number++;
                    first[s] += b * (mixed - a);
                    total[s] += 0.5 * (a - mixed) * (a - mixed);
                }
            }
            first[s] /= number * variance;
            total[s] /= number * variance;
        }
        return new Index(mean(first), error(first), mean(total), error(total));
    }

    /** Mean of those that there are; a shift without a row has none. */
    private static double mean(double[] values) {
        return Arrays.stream(values).filter(Double::isFinite).average().orElse(Double.NaN);
    }

    private static double error(double[] values) {
        double mean = mean(values);
        double[] own = Arrays.stream(values).filter(Double::isFinite).toArray();
        double sum = Arrays.stream(own).map(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(sum / (own.length - 1) / own.length);
    }
}
