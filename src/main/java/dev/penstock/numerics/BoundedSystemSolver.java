package dev.penstock.numerics;

import dev.penstock.errors.FailureSubject;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Root of a small system of equations inside bounds: Newton steps held inside a trust region (Levenberg-Marquardt), the
 * Jacobian by forward differences once and by Broyden's rank-one update after that, refreshed when progress is poor.
 * Works on scaled unknowns; residuals must be scaled by the caller so that 1 means "as large as the terms balanced".
 *
 * <p>A point at which the system throws a {@link PenstockException} or returns a non-finite number counts as infinitely
 * bad: the step is shortened. At the first guess the exception is passed on. Steps never leave the bounds; an unknown on a bound that the step would push outwards is
 * held there while the others move.
 *
 * <p>The Jacobian survives between calls of {@link #solve}, so that a system that changed a little is solved again in a
 * few evaluations. Not thread-safe; one instance per system. Methods: Nocedal and Wright, Numerical Optimization (2nd
 * ed. 2006), ch. 10 and 11 [nocedal-wright-2006].
 */
public final class BoundedSystemSolver {

    private static final double DIFFERENCE = 1e-6;
    private static final double FIRST_RADIUS = 1.0;
    private static final double SMALLEST_RADIUS = 1e-9;
    private static final double SUFFICIENT_DECREASE = 1e-4;
    private static final double POOR_PROGRESS = 0.25;

    /** The equations. */
    @FunctionalInterface
    public interface Equations {

        /**
         * @param x unknowns; must not be changed
         * @param residuals to be filled with the scaled residuals (-)
         */
        void evaluate(double[] x, double[] residuals);
    }

    /**
     * An unknown with what the solver must know of it.
     *
     * @param name what it is, for messages
     * @param unit SI unit as text
     * @param low lower bound
     * @param high upper bound
     * @param scale size of a change that matters, above zero
     * @param start first guess
     */
    public record Unknown(String name, String unit, double low, double high, double scale, double start) {

        public Unknown {
            if (!(low < high) || !(scale > 0) || !Double.isFinite(start)) {
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "unknown %s: %g to %g, scale %g", name, low, high, scale));
            }
            start = Math.min(high, Math.max(low, start));
        }

        /**
         * @param newStart first guess
         * @return the same unknown, starting there
         */
        public Unknown startingAt(double newStart) {
            return new Unknown(name, unit, low, high, scale, newStart);
        }
    }

    /**
     * A root.
     *
     * @param values the unknowns
     * @param worstResidual largest scaled residual (-)
     * @param iterations steps taken
     * @param evaluations evaluations of the equations
     */
    public record Solution(List<Double> values, double worstResidual, int iterations, int evaluations) {

        public Solution {
            values = List.copyOf(values);
        }
    }

    private final FailureSubject subject;
    private final String what;
    private final int maxIterations;
    private final int patience;
    private RealMatrix jacobian;

    /**
     * @param what what is being solved, for messages
     * @param maxIterations most steps, accepted or not
     */
    public BoundedSystemSolver(String what, int maxIterations) {
        this(FailureSubject.MODEL, what, maxIterations);
    }

    /**
     * @param subject what a failure is about
     * @param what what is being solved, for messages
     * @param maxIterations most steps, accepted or not
     */
    public BoundedSystemSolver(FailureSubject subject, String what, int maxIterations) {
        this(subject, what, maxIterations, maxIterations + 1);
    }

    /**
     * @param subject what a failure is about
     * @param what what is being solved, for messages
     * @param maxIterations most steps, accepted or not
     * @param patience steps in which the residuals must halve; a search that takes longer is given up
     */
    public BoundedSystemSolver(FailureSubject subject, String what, int maxIterations, int patience) {
        this.subject = subject;
        this.what = what;
        this.maxIterations = maxIterations;
        this.patience = patience;
    }

    /** Forgets the Jacobian of the last solution. */
    public void reset() {
        jacobian = null;
    }

    /**
     * @param unknowns the unknowns
     * @param names of the residuals, for messages; as many as unknowns
     * @param equations the equations
     * @param tolerance largest scaled residual of a root (-)
     * @return the root
     * @throws NotConverged if none is found; it names the worst residual and the bounds touched
     */
    public Solution solve(List<Unknown> unknowns, List<String> names, Equations equations, double tolerance) {
        return solve(unknowns, names, equations, tolerance, tolerance);
    }

    /**
     * As above, but content with less where rounding in the equations stops progress.
     *
     * @param unknowns the unknowns
     * @param names of the residuals, for messages; as many as unknowns
     * @param equations the equations
     * @param tolerance largest scaled residual to work towards (-)
     * @param acceptable largest scaled residual accepted when no step makes it smaller (-)
     * @return the root
     * @throws NotConverged if none is found
     */
    public Solution solve(
            List<Unknown> unknowns, List<String> names, Equations equations, double tolerance, double acceptable) {
        int n = unknowns.size();
        if (names.size() != n) {
            throw new IllegalArgumentException(what + ": " + n + " unknowns, but equations " + names);
        }
        Search search = new Search(unknowns, names, equations);
        if (n == 0) {
            return new Solution(List.of(), 0, 0, 0);
        }
        if (jacobian == null || jacobian.getColumnDimension() != n) {
            search.refreshJacobian();
        }
        return search.run(tolerance, acceptable);
    }

    /** One search: the present point, its residuals, and the trust region around it. */
    private final class Search {

        private final List<Unknown> unknowns;
        private final List<String> names;
        private final Equations equations;
        private final double[] x;
        private double[] residuals;
        private double radius = FIRST_RADIUS;
        private boolean fresh;
        private int evaluations;
        private PenstockException lastRefusal;

        Search(List<Unknown> unknowns, List<String> names, Equations equations) {
            this.unknowns = unknowns;
            this.names = names;
            this.equations = equations;
            this.x = unknowns.stream().mapToDouble(Unknown::start).toArray();
            this.residuals = evaluate(x);
        }

        Solution run(double tolerance, double acceptable) {
            double before = Double.POSITIVE_INFINITY;
            for (int iteration = 0; iteration <= maxIterations; iteration++) {
                if (worst(residuals) <= tolerance) {
                    return solution(iteration);
                }
                if (iteration % patience == 0) {
                    if (norm(residuals) > 0.5 * before) {
                        return settled(iteration, acceptable, "the search has stalled");
                    }
                    before = norm(residuals);
                }
                if (!Double.isFinite(worst(residuals))) {
                    throw lastRefusal != null ? lastRefusal : failed(0, "no value at the first guess");
                }
                double[] step = boundedStep();
                double[] trial = moved(step);
                double[] trialResiduals = evaluate(trial);
                double ratio = norm(trialResiduals) / norm(residuals);
                if (ratio < 1 - SUFFICIENT_DECREASE) {
                    accept(trial, trialResiduals, step, ratio);
                } else if (!fresh) {
                    refreshJacobian();
                } else {
                    radius = 0.25 * Math.min(radius, norm(step));
                    if (worst(residuals) <= acceptable || radius < SMALLEST_RADIUS) {
                        return settled(iteration, acceptable, "no step makes it smaller");
                    }
                }
            }
            return settled(maxIterations, acceptable, "steps used up");
        }

        /** The root if this is near enough to one. */
        private Solution settled(int iteration, double acceptable, String otherwise) {
            if (worst(residuals) <= acceptable) {
                return solution(iteration);
            }
            throw failed(iteration, otherwise + boundsTouched());
        }

        private Solution solution(int iteration) {
            List<Double> values = new ArrayList<>();
            for (double value : x) {
                values.add(value);
            }
            return new Solution(values, worst(residuals), iteration, evaluations);
        }

        private void accept(double[] trial, double[] trialResiduals, double[] step, double ratio) {
            broydenUpdate(trial, trialResiduals);
            System.arraycopy(trial, 0, x, 0, x.length);
            residuals = trialResiduals;
            if (ratio > POOR_PROGRESS && !fresh) {
                refreshJacobian();
            } else {
                fresh = false;
            }
            if (ratio < 0.7 && norm(step) > 0.5 * radius) {
                radius *= 2.5;
            }
        }

        /** Rank-one correction so that the Jacobian explains the step just made. */
        private void broydenUpdate(double[] trial, double[] trialResiduals) {
            double[] moved = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                moved[i] = (trial[i] - x[i]) / unknowns.get(i).scale();
            }
            double square = norm(moved) * norm(moved);
            if (square == 0) {
                return;
            }
            double[] predicted = jacobian.operate(moved);
            for (int row = 0; row < x.length; row++) {
                double miss = (trialResiduals[row] - residuals[row] - predicted[row]) / square;
                for (int column = 0; column < x.length; column++) {
                    jacobian.addToEntry(row, column, miss * moved[column]);
                }
            }
        }

        private void refreshJacobian() {
            int n = x.length;
            RealMatrix matrix = new Array2DRowRealMatrix(n, n);
            for (int column = 0; column < n; column++) {
                double[] beside = x.clone();
                Unknown unknown = unknowns.get(column);
                double step = DIFFERENCE * unknown.scale();
                double sign = x[column] + step <= unknown.high() ? 1 : -1;
                beside[column] = x[column] + sign * step;
                double[] shifted = evaluate(beside);
                if (!Double.isFinite(worst(shifted))) {
                    beside[column] = x[column] - sign * step;
                    shifted = evaluate(beside);
                }
                double moved = (beside[column] - x[column]) / unknown.scale();
                for (int row = 0; row < n; row++) {
                    double slope = (shifted[row] - residuals[row]) / moved;
                    matrix.setEntry(row, column, Double.isFinite(slope) ? slope : 0);
                }
            }
            jacobian = matrix;
            fresh = true;
        }

        /** Step in scaled unknowns: unknowns held on a bound are left out of the linear system. */
        private double[] boundedStep() {
            int n = x.length;
            boolean[] held = new boolean[n];
            double[] step = new double[n];
            for (int round = 0; round <= n; round++) {
                step = trustStep(held);
                boolean again = false;
                for (int i = 0; i < n; i++) {
                    Unknown u = unknowns.get(i);
                    boolean outwards = step[i] > 0 && x[i] >= u.high() || step[i] < 0 && x[i] <= u.low();
                    if (outwards && !held[i]) {
                        held[i] = true;
                        again = true;
                    }
                }
                if (!again) {
                    break;
                }
            }
            return step;
        }

        /** Minimises |r + J s|² + damping |s|² over the unknowns not held, with |s| inside the radius. */
        private double[] trustStep(boolean[] held) {
            int[] free = java.util.stream.IntStream.range(0, x.length)
                    .filter(i -> !held[i])
                    .toArray();
            double[] step = new double[x.length];
            if (free.length == 0) {
                return step;
            }
            int[] rows = java.util.stream.IntStream.range(0, x.length).toArray();
            RealMatrix j = jacobian.getSubMatrix(rows, free);
            SingularValueDecomposition svd = new SingularValueDecomposition(j);
            double[] sigma = svd.getSingularValues();
            double[] projected = svd.getUT().operate(residuals);
            double damping = 0;
            double[] reduced = combine(svd, sigma, projected, damping);
            damping = 1e-8 * sigma[0] * sigma[0] + Double.MIN_NORMAL;
            while (norm(reduced) > radius) {
                reduced = combine(svd, sigma, projected, damping);
                damping *= 3;
            }
            for (int i = 0; i < free.length; i++) {
                step[free[i]] = reduced[i];
            }
            return step;
        }

        private double[] combine(SingularValueDecomposition svd, double[] sigma, double[] projected, double damping) {
            double[] coefficients = new double[sigma.length];
            double floor = 1e-12 * sigma[0];
            for (int i = 0; i < sigma.length; i++) {
                double square = sigma[i] * sigma[i] + damping;
                coefficients[i] = sigma[i] > floor ? -sigma[i] * projected[i] / square : 0;
            }
            return svd.getV().operate(coefficients);
        }

        private double[] moved(double[] step) {
            double[] trial = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                Unknown u = unknowns.get(i);
                trial[i] = Math.min(u.high(), Math.max(u.low(), x[i] + step[i] * u.scale()));
            }
            return trial;
        }

        private double[] evaluate(double[] at) {
            Cancellation.check();
            double[] out = new double[at.length];
            evaluations++;
            try {
                equations.evaluate(at, out);
            } catch (PenstockException e) {
                lastRefusal = e;
                Arrays.fill(out, Double.POSITIVE_INFINITY);
            }
            for (double value : out) {
                if (!Double.isFinite(value)) {
                    Arrays.fill(out, Double.POSITIVE_INFINITY);
                    break;
                }
            }
            return out;
        }

        private NotConverged failed(int iterations, String detail) {
            int index = 0;
            for (int i = 1; i < residuals.length; i++) {
                index = Math.abs(residuals[i]) > Math.abs(residuals[index]) ? i : index;
            }
            return new NotConverged(subject, what + ", " + names.get(index), iterations, worst(residuals), detail);
        }

        private String boundsTouched() {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < x.length; i++) {
                Unknown u = unknowns.get(i);
                if (x[i] <= u.low() || x[i] >= u.high()) {
                    text.append(String.format(Locale.ROOT, "; %s is on its bound %.6g %s", u.name(), x[i], u.unit()));
                }
            }
            return text.toString();
        }
    }

    private static double norm(double[] v) {
        double sum = 0;
        for (double value : v) {
            sum += value * value;
        }
        return Math.sqrt(sum);
    }

    private static double worst(double[] v) {
        double worst = 0;
        for (double value : v) {
            worst = Math.max(worst, Math.abs(value));
        }
        return worst;
    }
}
