package dev.penstock.numerics;

import dev.penstock.errors.NotConverged;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * Root of a function of one variable between two bounds, by Brent's method (Commons Math) or from a guess by secants. The function is guarded: the
 * first non-finite value ends the search with its argument, since the library's solvers can return a wrong root on NaN.
 */
public final class RootFinder {

    private static final int MAX_EVALUATIONS = 200;
    private static final int STEPS_PER_HALVING = 4;
    private static final double SMALL_BEFORE = 1e3;

    private RootFinder() {}

    /**
     * A root and the effort it took.
     *
     * @param value argument at the root
     * @param residual function value there
     * @param evaluations function evaluations used
     * @param slope of the last secant, for the next search of that kind; that handed in where no two points were tried; NaN by Brent's method
     */
    public record Root(double value, double residual, int evaluations, double slope) {}

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
        Cancellation.check();
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
            return new Root(root, guarded.applyAsDouble(root), count[0], Double.NaN);
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

    /**
     * Root of a rising function near a guess, by secant steps held inside a shrinking bracket: for functions that cost much
     * and are nearly straight. A bound is asked only when a step would pass it.
     *
     * @param what what is being solved, for messages
     * @param function function that rises; jumps are allowed
     * @param low lower bound
     * @param high upper bound, above the lower
     * @param guess first guess
     * @param slope guess of the slope, above zero
     * @param tolerance absolute tolerance on the argument
     * @return the root; a bound if the function has the same sign up to it
     * @throws NotConverged if a value is not finite or the evaluations run out
     */
    public static Root near(
            String what,
            DoubleUnaryOperator function,
            double low,
            double high,
            double guess,
            double slope,
            double tolerance) {
        Cancellation.check();
        double a = low;
        double b = high;
        double x = Math.max(low, Math.min(high, guess));
        double last = Double.NaN;
        double lastValue = Double.NaN;
        double width = b - a;
        double steepness = slope;
        boolean lowAsked = false;
        boolean highAsked = false;
        for (int count = 1; count <= MAX_EVALUATIONS; count++) {
            double value = function.applyAsDouble(x);
            if (!Double.isFinite(value)) {
                throw new NotConverged(
                        what, count, Double.POSITIVE_INFINITY, "the function is " + value + " at " + text(x));
            }
            double secant = (value - lastValue) / (x - last);
            steepness = secant > 0 ? secant : steepness;
            boolean beyond = x == high && value <= 0 || x == low && value >= 0;
            if (value == 0 || beyond) {
                return new Root(x, value, count, steepness);
            }
            lowAsked |= x == low;
            highAsked |= x == high;
            if (value < 0) {
                a = x;
            } else {
                b = x;
            }
            double step = secant > 0 ? -value / secant : -value / slope;
            if (secant <= 0) {
                // a plateau: ever longer steps cross it
                step = Math.copySign(Math.max(Math.abs(step), 2 * Math.abs(x - last)), step);
            }
            double next = x + step;
            boolean small = Math.abs(next - x) <= tolerance;
            if (small && Math.abs(x - last) <= SMALL_BEFORE * tolerance || b - a <= tolerance) {
                return new Root(x, value, count, steepness);
            }
            if (small) {
                // one small step may come of a jump between the last two points
                next = x - Math.copySign(tolerance, value);
            }
            boolean check = count % STEPS_PER_HALVING == 0;
            boolean asked = (a > low || lowAsked) && (b < high || highAsked);
            boolean stalls = check && asked && b - a > 0.5 * width;
            width = check ? b - a : width;
            last = x;
            lastValue = value;
            x = stalls ? 0.5 * (a + b) : next > a && next < b ? next : inside(next >= b, a, b, low, high);
        }
        throw new NotConverged(what, MAX_EVALUATIONS, Math.abs(lastValue), "between " + text(a) + " and " + text(b));
    }

    /** A bound that has not been asked yet, else the middle. */
    private static double inside(boolean upwards, double a, double b, double low, double high) {
        if (upwards && b == high) {
            return high;
        }
        return !upwards && a == low ? low : 0.5 * (a + b);
    }

    private static String text(double x) {
        return String.format(Locale.ROOT, "%.8g", x);
    }
}
