package dev.penstock.numerics;

import dev.penstock.errors.NotConverged;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * Root of a function of one variable between two bounds, by Brent's method (Commons Math). The function is guarded: the
 * first non-finite value ends the search with its argument, since the library's solvers can return a wrong root on NaN.
 */
public final class RootFinder {

    private static final int MAX_EVALUATIONS = 200;

    private RootFinder() {}

    /**
     * A root and the effort it took.
     *
     * @param value argument at the root
     * @param residual function value there
     * @param evaluations function evaluations used
     */
    public record Root(double value, double residual, int evaluations) {}

    /**
     * @param what what is being solved, for messages
     * @param function continuous function, of opposite sign at the bounds
     * @param low lower bound
     * @param high upper bound
     * @param relativeTolerance relative tolerance on the argument (-)
     * @return the root; its bracket is narrower than the tolerance times its size
     * @throws NotConverged if the bounds do not bracket a root, a value is not finite, or the evaluations run out
     */
    public static Root between(
            String what, DoubleUnaryOperator function, double low, double high, double relativeTolerance) {
        int[] count = new int[1];
        DoubleUnaryOperator guarded = x -> {
            count[0]++;
            double y = function.applyAsDouble(x);
            if (!Double.isFinite(y)) {
                throw new NotConverged(
                        what, count[0], Double.POSITIVE_INFINITY, "the function is " + y + " at " + text(x));
            }
            return y;
        };
        double scale = Math.max(Math.abs(low), Math.abs(high));
        BrentSolver solver = new BrentSolver(relativeTolerance, relativeTolerance * scale * 1e-3, 0.0);
        try {
            double root = solver.solve(MAX_EVALUATIONS, guarded::applyAsDouble, low, high);
            return new Root(root, guarded.applyAsDouble(root), count[0]);
        } catch (NoBracketingException e) {
            throw new NotConverged(
                    what,
                    count[0],
                    Math.min(Math.abs(e.getFLo()), Math.abs(e.getFHi())),
                    "no sign change between " + text(low) + " (" + text(e.getFLo()) + ") and " + text(high) + " ("
                            + text(e.getFHi()) + ")");
        } catch (TooManyEvaluationsException e) {
            throw new NotConverged(
                    what,
                    count[0],
                    Double.POSITIVE_INFINITY,
                    "evaluations used up between " + text(low) + " and " + text(high));
        }
    }

    private static String text(double x) {
        return String.format(Locale.ROOT, "%.8g", x);
    }
}
