package dev.penstock.numerics;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Quadratics of several values over the same few variables, and where what the values add up to is small in a box.
 *
 * <pre>
 * v_k(s) = v_k0 + g_k s + s H_k s / 2;   (∇²F + λ D) d = −∇F  on the variables that are free
 * ∇F = Σ F_k ∇v_k,   ∇²F = Σ F_k H_k + F_kk ∇v_k ∇v_kᵀ
 * </pre>
 *
 * Newton's method, damped after Levenberg and Marquardt until the matrix is positive definite, so that no saddle draws it, and F gets less. F_k and F_kk are differences of the sum
 * by each value alone, exact but for its kinks where it adds up functions of single values; of another sum the way is longer. Immutable.
 */
final class QuadraticModels {

    private static final int MOST_STEPS = 100;
    private static final double FIRST_DAMPING = 1e-3;
    private static final double LEAST_DAMPING = 1e-9;
    private static final double MOST_DAMPING = 1e9;
    private static final double FACTOR = 5;
    /** Steps of a value for differences of the sum: the first and the second. */
    private static final double FIRST_STEP = 1e-6;

    private static final double SECOND_STEP = 1e-4;
    /** Gain over the sum below which nothing more is gained (-). */
    private static final double ENOUGH = 1e-14;

    private final double[][] models;
    private final int n;

    /**
     * @param models coefficients of each value: constant, slopes, then curvatures row by row; handed over
     * @param n number of variables
     */
    QuadraticModels(double[][] models, int n) {
        this.models = models;
        this.n = n;
    }

    /** @return whether there are none */
    boolean isEmpty() {
        return models.length == 0;
    }

    /** Values at a place. */
    double[] at(double[] s) {
        double[] values = new double[models.length];
        for (int k = 0; k < values.length; k++) {
            double value = models[k][0];
            for (int i = 0; i < n; i++) {
                value += 0.5 * s[i] * (models[k][1 + i] + slope(k, i, s));
            }
            values[k] = value;
        }
        return values;
    }

    private double slope(int k, int i, double[] s) {
        double slope = models[k][1 + i];
        for (int j = 0; j < n; j++) {
            slope += curvature(k, i, j) * s[j];
        }
        return slope;
    }

    private double curvature(int k, int i, int j) {
        return models[k][1 + n + i * n + j];
    }

    /** Place between the bounds where the sum is small, from the origin on. */
    double[] least(ToDoubleFunction<double[]> sum, double[] low, double[] high) {
        double[] s = new double[n];
        double[] values = at(s);
        double least = sum.applyAsDouble(values);
        double damping = FIRST_DAMPING;
        double[] gradient = new double[n];
        double[][] curvature = new double[n][n];
        boolean moved = true;
        for (int step = 0; step < MOST_STEPS && damping < MOST_DAMPING; step++) {
            if (moved) {
                derivatives(sum, s, values, least, gradient, curvature);
            }
            double[] next = newton(s, gradient, curvature, damping, low, high);
            double[] there = at(next);
            double found = sum.applyAsDouble(there);
            moved = found < least;
            if (!moved) {
                damping *= FACTOR;
                continue;
            }
            double gain = least - found;
            s = next;
            values = there;
            least = found;
            damping = Math.max(LEAST_DAMPING, damping / FACTOR);
            if (gain <= ENOUGH * Math.abs(least)) {
                break;
            }
        }
        return s;
    }

    private void derivatives(
            ToDoubleFunction<double[]> sum,
            double[] s,
            double[] values,
            double here,
            double[] gradient,
            double[][] curvature) {
        Arrays.fill(gradient, 0);
        for (double[] row : curvature) {
            Arrays.fill(row, 0);
        }
        double[] slopes = new double[n];
        for (int k = 0; k < values.length; k++) {
            double first = (moved(sum, values, k, FIRST_STEP) - moved(sum, values, k, -FIRST_STEP)) / (2 * FIRST_STEP);
            double second = (moved(sum, values, k, SECOND_STEP) + moved(sum, values, k, -SECOND_STEP) - 2 * here)
                    / (SECOND_STEP * SECOND_STEP);
            for (int i = 0; i < n; i++) {
                slopes[i] = slope(k, i, s);
                gradient[i] += first * slopes[i];
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    curvature[i][j] += first * curvature(k, i, j) + second * slopes[i] * slopes[j];
                }
            }
        }
    }

    private static double moved(ToDoubleFunction<double[]> sum, double[] values, int k, double by) {
        double was = values[k];
        values[k] = was + by;
        double found = sum.applyAsDouble(values);
        values[k] = was;
        return found;
    }

    /** The damped step of the free variables, ended at the bounds; none where the damping is too weak for it to lead downwards. */
    private double[] newton(
            double[] s, double[] gradient, double[][] curvature, double damping, double[] low, double[] high) {
        double steepest = Double.MIN_NORMAL;
        for (double slope : gradient) {
            steepest = Math.max(steepest, Math.abs(slope));
        }
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            if (held(i, s, gradient, low, high)) {
                a[i][i] = 1;
                continue;
            }
            for (int j = 0; j < n; j++) {
                a[i][j] = held(j, s, gradient, low, high) ? 0 : curvature[i][j];
            }
            a[i][i] += damping * Math.max(Math.abs(curvature[i][i]), steepest);
            a[i][n] = -gradient[i];
        }
        double[] next = new double[n];
        if (!solved(a, next)) {
            return s;
        }
        for (int i = 0; i < n; i++) {
            next[i] = Math.min(high[i], Math.max(low[i], s[i] + next[i]));
        }
        return next;
    }

    private static boolean held(int i, double[] s, double[] gradient, double[] low, double[] high) {
        return s[i] <= low[i] && gradient[i] > 0 || s[i] >= high[i] && gradient[i] < 0;
    }

    /** Elimination without exchange of rows, which end with the right-hand side; false where the matrix is not positive definite. */
    private boolean solved(double[][] a, double[] x) {
        for (int c = 0; c < n; c++) {
            if (!(a[c][c] > 0)) {
                return false;
            }
            for (int r = c + 1; r < n; r++) {
                double factor = a[r][c] / a[c][c];
                for (int j = c; j <= n; j++) {
                    a[r][j] -= factor * a[c][j];
                }
            }
        }
        for (int r = n - 1; r >= 0; r--) {
            double rest = a[r][n];
            for (int j = r + 1; j < n; j++) {
                rest -= a[r][j] * x[j];
            }
            x[r] = rest / a[r][r];
        }
        return true;
    }
}
