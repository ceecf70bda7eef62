package dev.penstock.numerics;

import java.util.function.ToDoubleFunction;

/**
 * Finishes a search of a few variables under limits: each of several smooth functions gets a quadratic of its own, and what they add up
 * to is minimised on those near the best point, round after round.
 *
 * <pre>
 * v_k(x0 + h s) ~ v_k0 + g_k s + s H_k s / 2  from (n + 1)(n + 2)/2 values;   min F(v(s)), |s_i| ≤ 2
 * </pre>
 *
 * A penalty on a limit is a wall of which one quadratic of the sum sees nothing before it stands in it; quadratics of the limits
 * themselves know where it is. Not thread-safe.
 */
public final class LimitedDescent {

    /** Reach of the models in steps, and of the search on them. */
    private static final double REACH = 2;

    private static final double SHRINK = 0.4;
    private static final double GROW = 1.6;
    private static final double NEAR_EDGE = 0.95;
    /** Places tried on the same models, nearer and nearer. */
    private static final int TRIES = 3;

    /**
     * Something that has values at a place.
     *
     * @param <T> what is found at a place
     */
    public interface Values<T> {

        /**
         * @param x variables, each from 0 to 1
         * @return what is there
         */
        T at(double[] x);

        /**
         * @param there what is at a place
         * @return its smooth values; empty where there are none
         */
        double[] of(T there);

        /**
         * @param best a place that was found better, from which the next round goes on
         * @return the same seen from itself
         */
        T anew(T best);
    }

    private final ToDoubleFunction<double[]> sum;
    private final int rounds;
    private final double least;

    /**
     * @param sum what is to be small, of the values
     * @param rounds most rounds
     * @param least gain of a round (in the unit of the sum) below which the search ends
     */
    public LimitedDescent(ToDoubleFunction<double[]> sum, int rounds, double least) {
        this.sum = sum;
        this.rounds = rounds;
        this.least = least;
    }

    /**
     * @param values the functions
     * @param start where to begin, each variable from 0 to 1
     * @param there what is there
     * @param first first step, of the range of a variable (-)
     * @return the best found
     * @param <T> what is found at a place
     */
    public <T> T from(Values<T> values, double[] start, T there, double first) {
        int n = start.length;
        double[] x = start.clone();
        T best = there;
        double step = first;
        for (int round = 0; round < rounds; round++) {
            QuadraticModels models = new QuadraticModels(models(values, x, best, step), n);
            if (models.isEmpty()) {
                step *= SHRINK;
                continue;
            }
            double was = sum.applyAsDouble(values.of(best));
            double reach = REACH;
            double hoped = 0;
            boolean better = false;
            boolean edge = false;
            for (int tries = 0; tries < TRIES && !better; tries++) {
                double[] s = least(models, x, step, reach);
                hoped = was - sum.applyAsDouble(models.at(s));
                double[] next = moved(x, s, step);
                T tried = values.at(next);
                double[] found = values.of(tried);
                better = found.length > 0 && sum.applyAsDouble(found) < was;
                if (better) {
                    T again = values.anew(tried);
                    better = sum.applyAsDouble(values.of(again)) < was;
                    if (!better) {
                        values.anew(best);
                        reach *= SHRINK;
                        continue;
                    }
                    x = next;
                    best = again;
                    for (double one : s) {
                        edge |= Math.abs(one) > NEAR_EDGE * reach;
                    }
                } else if (hoped < least) {
                    break;
                } else {
                    reach *= SHRINK;
                }
            }
            if (hoped < least) {
                break;
            }
            step *= better && edge ? GROW * reach / REACH : better ? SHRINK : SHRINK * SHRINK;
        }
        return best;
    }

    private static double[] moved(double[] x, double[] s, double step) {
        double[] next = x.clone();
        for (int i = 0; i < x.length; i++) {
            next[i] = Math.min(1, Math.max(0, x[i] + step * s[i]));
        }
        return next;
    }

    /** Coefficients of each value: constant, slopes, then curvatures row by row; none where a place has no answer. */
    private <T> double[][] models(Values<T> values, double[] x, T best, double step) {
        int n = x.length;
        double[] centre = values.of(best);
        int m = centre.length;
        double[][] models = new double[m][1 + n + n * n];
        double[] side = new double[n];
        double[][] near = new double[n][];
        double[] s = new double[n];
        for (int i = 0; i < n; i++) {
            side[i] = x[i] + step > 1 ? -1 : 1;
            double other = x[i] - side[i] * step < 0 || x[i] - side[i] * step > 1 ? 2 * side[i] : -side[i];
            s[i] = side[i];
            near[i] = values.of(values.at(moved(x, s, step)));
            s[i] = other;
            double[] far = values.of(values.at(moved(x, s, step)));
            s[i] = 0;
            if (near[i].length == 0 || far.length == 0) {
                return new double[0][];
            }
            for (int k = 0; k < m; k++) {
                double a = (near[i][k] - centre[k]) / side[i];
                double b = (far[k] - centre[k]) / other;
                double curvature = 2 * (a - b) / (side[i] - other);
                models[k][0] = centre[k];
                models[k][1 + i] = a - 0.5 * curvature * side[i];
                models[k][1 + n + i * n + i] = curvature;
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                s[i] = side[i];
                s[j] = side[j];
                double[] both = values.of(values.at(moved(x, s, step)));
                s[i] = 0;
                s[j] = 0;
                if (both.length == 0) {
                    return new double[0][];
                }
                for (int k = 0; k < m; k++) {
                    double mixed = (both[k] - near[i][k] - near[j][k] + centre[k]) / (side[i] * side[j]);
                    models[k][1 + n + i * n + j] = mixed;
                    models[k][1 + n + j * n + i] = mixed;
                }
            }
        }
        return models;
    }

    private double[] least(QuadraticModels models, double[] x, double step, double reach) {
        double[] low = new double[x.length];
        double[] high = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            low[i] = Math.max(-reach, -x[i] / step);
            high[i] = Math.min(reach, (1 - x[i]) / step);
        }
        return models.least(sum, low, high);
    }
}
