package dev.penstock.numerics;

import dev.penstock.errors.NotConverged;
import java.util.List;
import java.util.Locale;

/**
 * Ordinary differential equations by the classical fourth-order method of Runge and Kutta in steps that depend on the state
 * alone, never on an estimate of their error:
 *
 * <pre>
 * y₁ = y₀ + h/6 (k₁ + 2 k₂ + 2 k₃ + k₄)
 * </pre>
 *
 * Steps that are accepted or refused make the end of an integration jump by the tolerance when the start moves a little; these do not,
 * so that differences of two ends are true and a search over many starts sees a smooth function. An event is the first sign change
 * of its function over a step; its time is found on the cubic through both ends of the step, then by secants over steps of that
 * length. Not thread-safe.
 */
public final class FixedStepIntegrator implements InitialValueSolver {

    /** Length of the next step. */
    @FunctionalInterface
    public interface StepLength {

        /**
         * @param t independent variable
         * @param y state, read only
         * @return length of the step from there, above zero; continuous in both
         */
        double at(double t, double[] y);
    }

    private static final int MOST_STEPS = 100_000;
    private static final int MOST_TRIES = 8;
    private static final int SECANTS = 6;
    /** Share of a step to which the time of an event is found (-). */
    private static final double NEAR = 1e-10;

    private final String what;
    private final StepLength stepLength;
    private int evaluations;

    private double[] k1 = {};
    private double[] k2;
    private double[] k3;
    private double[] k4;
    private double[] between;
    private double[] next;

    /**
     * @param what what is being integrated, for messages
     * @param stepLength length of the steps
     */
    public FixedStepIntegrator(String what, StepLength stepLength) {
        this.what = what;
        this.stepLength = stepLength;
    }

    @Override
    public int evaluations() {
        return evaluations;
    }

    @Override
    public Stop integrate(
            Equations equations, double start, double[] y, double end, List<Event> events, Observer observer) {
        if (!(end > start)) {
            return new Stop(start, -1);
        }
        room(y.length);
        double t = start;
        double[] before = new double[events.size()];
        double[] after = new double[events.size()];
        for (int i = 0; i < before.length; i++) {
            before[i] = events.get(i).value(t, y);
        }
        derivatives(equations, t, y, k1);
        for (int step = 0; step < MOST_STEPS; step++) {
            Cancellation.check();
            double h = Math.min(stepLength.at(t, y), end - t);
            double to = h < end - t ? t + h : end;
            step(equations, t, y, h);
            derivatives(equations, to, next, k4);
            int first = -1;
            double share = 1;
            for (int i = 0; i < before.length; i++) {
                after[i] = events.get(i).value(to, next);
                if (before[i] * after[i] < 0 || after[i] == 0 && before[i] != 0) {
                    double found = crossing(events.get(i), t, y, h, before[i], after[i]);
                    if (first < 0 || found < share) {
                        first = i;
                        share = found;
                    }
                }
            }
            if (first >= 0) {
                double length = arrive(equations, events.get(first), t, y, h, share, before[first]);
                System.arraycopy(next, 0, y, 0, y.length);
                observer.step(t + length, y);
                return new Stop(t + length, first);
            }
            System.arraycopy(next, 0, y, 0, y.length);
            System.arraycopy(k4, 0, k1, 0, k1.length);
            System.arraycopy(after, 0, before, 0, before.length);
            t = to;
            observer.step(t, y);
            if (t >= end) {
                return new Stop(end, -1);
            }
        }
        throw new NotConverged(what, evaluations, Double.POSITIVE_INFINITY, "steps used up");
    }

    private void room(int size) {
        if (k1.length != size) {
            k1 = new double[size];
            k2 = new double[size];
            k3 = new double[size];
            k4 = new double[size];
            between = new double[size];
            next = new double[size];
        }
    }

    private void derivatives(Equations equations, double t, double[] y, double[] to) {
        evaluations++;
        equations.derivatives(t, y, to);
    }

    /** One step of a length; k1 holds the derivatives at its start, {@code next} gets its end. */
    private void step(Equations equations, double t, double[] y, double h) {
        along(y, 0.5 * h, k1, between);
        derivatives(equations, t + 0.5 * h, between, k2);
        along(y, 0.5 * h, k2, between);
        derivatives(equations, t + 0.5 * h, between, k3);
        along(y, h, k3, between);
        derivatives(equations, t + h, between, k4);
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            next[i] = y[i] + h / 6 * (k1[i] + 2 * (k2[i] + k3[i]) + k4[i]);
            sum += next[i];
        }
        if (!Double.isFinite(sum)) {
            throw new NotConverged(
                    what,
                    evaluations,
                    Double.POSITIVE_INFINITY,
                    String.format(Locale.ROOT, "the state is not finite at %.8g", t + h));
        }
    }

    private static void along(double[] y, double h, double[] slope, double[] to) {
        for (int i = 0; i < y.length; i++) {
            to[i] = y[i] + h * slope[i];
        }
    }

    /** Share of the step at which an event changes its sign on the cubic through both ends; k4 holds the derivatives at the end. */
    private double crossing(Event event, double t, double[] y, double h, double before, double after) {
        double low = 0;
        double high = 1;
        double atLow = before;
        double atHigh = after;
        for (int i = 0; i < MOST_TRIES && high - low > NEAR; i++) {
            double x = low + (high - low) * Math.min(0.98, Math.max(0.02, atLow / (atLow - atHigh)));
            cubic(y, h, x);
            double value = event.value(t + x * h, between);
            if (value == 0) {
                return x;
            }
            if (value * atLow < 0) {
                high = x;
                atHigh = value;
            } else {
                low = x;
                atLow = value;
            }
        }
        return low + (high - low) * atLow / (atLow - atHigh);
    }

    private void cubic(double[] y, double h, double x) {
        double u = 1 - x;
        double fromStart = u * u * (1 + 2 * x);
        double fromEnd = x * x * (3 - 2 * x);
        double slopeStart = h * x * u * u;
        double slopeEnd = -h * x * x * u;
        for (int i = 0; i < y.length; i++) {
            between[i] = fromStart * y[i] + fromEnd * next[i] + slopeStart * k1[i] + slopeEnd * k4[i];
        }
    }

    /**
     * Steps from the start of the step right to an event, by secants that are held between the start and the end of the step;
     * {@code next} gets the state there.
     */
    private double arrive(
            Equations equations, Event event, double t, double[] y, double h, double share, double before) {
        double low = 0;
        double high = h;
        double slope = -before / (share * h);
        double lastLength = 0;
        double lastValue = before;
        double length = share * h;
        for (int i = 1; ; i++) {
            step(equations, t, y, length);
            double value = event.value(t + length, next);
            if (value == 0 || i == SECANTS) {
                return length;
            }
            if (value * before > 0) {
                low = length;
            } else {
                high = length;
            }
            slope = i == 1 ? slope : (value - lastValue) / (length - lastLength);
            lastValue = value;
            lastLength = length;
            double to = length - value / slope;
            to = to > low && to < high ? to : 0.5 * (low + high);
            if (Math.abs(to - length) < NEAR * h) {
                return length;
            }
            length = to;
        }
    }
}
