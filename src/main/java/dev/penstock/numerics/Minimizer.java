package dev.penstock.numerics;

import dev.penstock.errors.NotConverged;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * Smallest value of a function within bounds, without derivatives (Commons Math): Brent's method for one variable,
 * Powell's BOBYQA for several. The function is guarded: the first non-finite value ends the search with its argument.
 */
public final class Minimizer {

    private Minimizer() {}

    /**
     * Where the function is smallest, and the effort it took.
     *
     * @param point argument, one number per variable
     * @param value function value there
     * @param evaluations function evaluations used
     */
    public record Minimum(List<Double> point, double value, int evaluations) {

        public Minimum {
            point = List.copyOf(point);
        }

        /** @return the point as an array of its own */
        public double[] array() {
            return point.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /**
     * @param what what is being minimised, for messages
     * @param function continuous function with one valley between the bounds
     * @param low lower bound
     * @param high upper bound
     * @param relativeTolerance relative tolerance on the argument (-); below 1e-8 gains nothing
     * @param maxEvaluations evaluations allowed
     * @return the minimum
     * @throws NotConverged if a value is not finite or the evaluations run out
     */
    public static Minimum between(
            String what,
            DoubleUnaryOperator function,
            double low,
            double high,
            double relativeTolerance,
            int maxEvaluations) {
        Count count = new Count(what);
        double absolute = relativeTolerance * 1e-3 * Math.max(Math.abs(low), Math.abs(high));
        try {
            UnivariatePointValuePair best = new BrentOptimizer(relativeTolerance, absolute)
                    .optimize(
                            new MaxEval(maxEvaluations),
                            new UnivariateObjectiveFunction(
                                    x -> count.finite(function.applyAsDouble(x), Double.toString(x))),
                            GoalType.MINIMIZE,
                            new SearchInterval(low, high));
            return new Minimum(List.of(best.getPoint()), best.getValue(), count.evaluations);
        } catch (TooManyEvaluationsException e) {
            throw new NotConverged(what, count.evaluations, Double.POSITIVE_INFINITY, "evaluations used up");
        }
    }

    /**
     * Two or more variables. Each is scaled to its range first, so that the radii below mean the same for all.
     *
     * @param what what is being minimised, for messages
     * @param function continuous function of as many variables as there are bounds; must not keep its argument
     * @param start first guess
     * @param low lower bounds
     * @param high upper bounds
     * @param firstRadius first trust-region radius as a fraction of each range (-)
     * @param lastRadius radius at which the search ends, as a fraction of each range (-)
     * @param maxEvaluations evaluations allowed; running out returns the best point so far
     * @return the minimum
     * @throws NotConverged if a value is not finite
     */
    public static Minimum within(
            String what,
            ToDoubleFunction<double[]> function,
            double[] start,
            double[] low,
            double[] high,
            double firstRadius,
            double lastRadius,
            int maxEvaluations) {
        int n = start.length;
        Count count = new Count(what);
        double[] point = new double[n];
        double[] best = start.clone();
        double[] bestValue = {Double.POSITIVE_INFINITY};
        double[] zeros = new double[n];
        double[] ones = new double[n];
        Ranges ranges = new Ranges(low, high);
        Arrays.fill(ones, 1);
        ObjectiveFunction objective = new ObjectiveFunction(unit -> {
            ranges.values(unit, point);
            double value = count.finite(function.applyAsDouble(point), Arrays.toString(point));
            if (value < bestValue[0]) {
                bestValue[0] = value;
                System.arraycopy(point, 0, best, 0, n);
            }
            return value;
        });
        try {
            new BOBYQAOptimizer(2 * n + 1, firstRadius, lastRadius)
                    .optimize(
                            new MaxEval(maxEvaluations),
                            objective,
                            GoalType.MINIMIZE,
                            new InitialGuess(ranges.shares(start)),
                            new SimpleBounds(zeros, ones));
        } catch (MathIllegalStateException e) {
            // The caller's budget is used up, or the quadratic model has broken down, as on a function with steps: the
            // best
            // point so far is a result.
        }
        List<Double> result = new ArrayList<>();
        for (double x : best) {
            result.add(x);
        }
        return new Minimum(result, bestValue[0], count.evaluations);
    }

    private static final class Count {

        private final String what;
        private int evaluations;

        private Count(String what) {
            this.what = what;
        }

        private double finite(double value, String at) {
            Cancellation.check();
            evaluations++;
            if (!Double.isFinite(value)) {
                throw new NotConverged(
                        what, evaluations, Double.POSITIVE_INFINITY, "the function is " + value + " at " + at);
            }
            return value;
        }
    }
}
