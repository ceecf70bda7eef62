package dev.penstock.numerics.variance;

import dev.penstock.numerics.sampling.Streams;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Finds the few of many coordinates that matter, by elementary effects along random paths on a coarse grid.
 * <pre>d_i = (f(x + Δ e_i) − f(x))/Δ,  Δ = 2/3 on the levels 0, 1/3, 2/3, 1;  μ* = mean |d|, σ = deviation of d</pre>
 */
public final class Screening {

    public static final ModelCard CARD = new ModelCard(
            "numerics.screening",
            "Elementary effects along random paths",
            "mu* = mean |f(x + delta e_i) - f(x)|/delta, sigma = deviation of the effects",
            "many inputs, of which few matter",
            "a handful of paths rank inputs; they measure nothing",
            List.of("morris-1991", "campolongo-2007"));

    /** Paths that are walked. */
    public static final int PATHS = 10;

    private static final int LEVELS = 4;
    private static final double STEP = LEVELS / (2.0 * (LEVELS - 1));

    /**
     * Effect of one coordinate on one function.
     *
     * @param mean mean size of its effects over the whole range, in the function's unit
     * @param deviation deviation of its effects: curvature, or interplay with others
     */
    public record Effect(double mean, double deviation) {}

    private Screening() {}

    /**
     * @param dimensions number of coordinates
     * @return places that are asked
     */
    public static int evaluations(int dimensions) {
        return PATHS * (dimensions + 1);
    }

    /**
     * @param function functions to ask
     * @param dimensions number of coordinates
     * @param seed seed of the paths
     * @param workers ask the functions
     * @return for each function the effect of each coordinate; zero where no step had two values
     */
    public static List<List<Effect>> of(Sampled function, int dimensions, long seed, Workers workers) {
        int steps = dimensions + 1;
        double[][] places = new double[PATHS * steps][];
        int[][] orders = new int[PATHS][];
        Streams streams = new Streams(seed);
        for (int p = 0; p < PATHS; p++) {
            orders[p] = walk(streams.of(p), dimensions, places, p * steps);
        }
        double[][] values = new double[places.length][];
        workers.forEach(places.length, k -> values[k] = function.at(places[k]));
        List<List<Effect>> all = new ArrayList<>();
        for (int f = 0; f < values[0].length; f++) {
            double[] number = new double[dimensions];
            double[] size = new double[dimensions];
            double[] sum = new double[dimensions];
            double[] squares = new double[dimensions];
            for (int p = 0; p < PATHS; p++) {
                for (int s = 0; s < dimensions; s++) {
                    int i = orders[p][s];
                    double moved = places[p * steps + s + 1][i] - places[p * steps + s][i];
                    double effect = (values[p * steps + s + 1][f] - values[p * steps + s][f]) / moved;
                    if (Double.isFinite(effect)) {
                        number[i]++;
                        size[i] += Math.abs(effect);
                        sum[i] += effect;
                        squares[i] += effect * effect;
                    }
                }
            }
            List<Effect> effects = new ArrayList<>();
            for (int i = 0; i < dimensions; i++) {
                double n = Math.max(1, number[i]);
                double spread = Math.max(0, squares[i] / n - sum[i] * sum[i] / n / n);
                effects.add(new Effect(size[i] / n, Math.sqrt(spread * n / Math.max(1, n - 1))));
            }
            all.add(List.copyOf(effects));
        }
        return List.copyOf(all);
    }

    /** Writes the places of a path; the order in which it moves its coordinates. */
    private static int[] walk(SplittableRandom random, int dimensions, double[][] places, int at) {
        double[] place = new double[dimensions];
        int[] order = new int[dimensions];
        for (int i = 0; i < dimensions; i++) {
            place[i] = random.nextInt(LEVELS) / (double) (LEVELS - 1);
            int j = random.nextInt(i + 1);
            order[i] = order[j];
            order[j] = i;
        }
        places[at] = place.clone();
        for (int s = 0; s < dimensions; s++) {
            int i = order[s];
            place[i] += place[i] < 0.5 ? STEP : -STEP;
            places[at + s + 1] = place.clone();
        }
        return order;
    }
}
