package dev.penstock.numerics;

import dev.penstock.errors.NotConverged;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Ordinary differential equations y' = f(t, y) with events, by the eighth-order method of Dormand and Prince with
 * adaptive steps (Commons Math). The right-hand side is guarded: the first non-finite derivative ends the integration
 * with its time. An event is a function of time and state; the integration stops at its first zero. Not thread-safe.
 */
public final class OdeIntegrator implements InitialValueSolver {

    private static final int MAX_EVALUATIONS = 200_000;

    private final String what;
    private final double[] absoluteTolerance;
    private final double relativeTolerance;
    private final double maxStep;
    private int evaluations;

    /**
     * @param what what is being integrated, for messages
     * @param absoluteTolerance largest error of a step in each component, in its unit
     * @param relativeTolerance largest error of a step relative to the component (-)
     * @param maxStep longest step; events closer together than this can be missed
     */
    public OdeIntegrator(String what, double[] absoluteTolerance, double relativeTolerance, double maxStep) {
        this.what = what;
        this.absoluteTolerance = absoluteTolerance.clone();
        this.relativeTolerance = relativeTolerance;
        this.maxStep = maxStep;
    }

    @Override
    public int evaluations() {
        return evaluations;
    }

    /** @throws NotConverged also if the step would get too small */
    @Override
    public Stop integrate(
            Equations equations, double start, double[] y, double end, List<Event> events, Observer observer) {
        if (!(end > start)) {
            return new Stop(start, -1);
        }
        double minStep = 1e-12 * Math.max(1, end - start);
        double[] relative = new double[y.length];
        java.util.Arrays.fill(relative, relativeTolerance);
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(minStep, Math.max(maxStep, 2 * minStep), absoluteTolerance, relative);
        integrator.setMaxEvaluations(MAX_EVALUATIONS);
        int[] ended = {-1};
        for (int i = 0; i < events.size(); i++) {
            integrator.addEventHandler(new Stopper(events.get(i), i, ended), maxStep, 1e-9, 100);
        }
        integrator.addStepHandler(new StepObserver(observer));
        try {
            double stop = integrator.integrate(guarded(equations, y.length), start, y, end, y);
            return new Stop(stop, ended[0]);
        } catch (MathIllegalArgumentException | MathIllegalStateException e) {
            throw new NotConverged(what, evaluations, Double.POSITIVE_INFINITY, e.getMessage());
        }
    }

    private FirstOrderDifferentialEquations guarded(Equations equations, int dimension) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return dimension;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] derivatives) {
                Cancellation.check();
                evaluations++;
                equations.derivatives(t, y, derivatives);
                for (double derivative : derivatives) {
                    if (!Double.isFinite(derivative)) {
                        throw new NotConverged(
                                what,
                                evaluations,
                                Double.POSITIVE_INFINITY,
                                String.format(Locale.ROOT, "a derivative is %s at %.8g", derivative, t));
                    }
                }
            }
        };
    }

    private record Stopper(Event event, int index, int[] ended) implements EventHandler {

        @Override
        public void init(double t0, double[] y0, double t) {
            // nothing to prepare
        }

        @Override
        public double g(double t, double[] y) {
            return event.value(t, y);
        }

        @Override
        public Action eventOccurred(double t, double[] y, boolean increasing) {
            ended[0] = index;
            return Action.STOP;
        }

        @Override
        public void resetState(double t, double[] y) {
            // the state is not changed
        }
    }

    private record StepObserver(Observer observer) implements org.apache.commons.math3.ode.sampling.StepHandler {

        @Override
        public void init(double t0, double[] y0, double t) {
            // the caller knows the start
        }

        @Override
        public void handleStep(org.apache.commons.math3.ode.sampling.StepInterpolator interpolator, boolean isLast) {
            double t = interpolator.getCurrentTime();
            interpolator.setInterpolatedTime(t);
            observer.step(t, interpolator.getInterpolatedState());
        }
    }
}
