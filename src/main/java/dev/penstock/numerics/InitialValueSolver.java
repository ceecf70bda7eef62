package dev.penstock.numerics;

import dev.penstock.errors.NotConverged;
import java.util.List;

/** Follows y' = f(t, y) from a state to an end or to the first of some events. */
public interface InitialValueSolver {

    /** Right-hand side. */
    @FunctionalInterface
    interface Equations {

        /**
         * @param t independent variable
         * @param y state, read only
         * @param derivatives where to write y'
         */
        void derivatives(double t, double[] y, double[] derivatives);
    }

    /** Something to stop at. */
    @FunctionalInterface
    interface Event {

        /**
         * @param t independent variable
         * @param y state, read only
         * @return a continuous function whose sign change is the event
         */
        double value(double t, double[] y);
    }

    /** Sees every accepted step. */
    @FunctionalInterface
    interface Observer {

        /**
         * @param t independent variable at the end of the step
         * @param y state there, read only
         */
        void step(double t, double[] y);
    }

    /**
     * Where an integration ended.
     *
     * @param time independent variable at the end
     * @param event index of the event that ended it; -1 if it ran to the end
     */
    record Stop(double time, int event) {}

    /**
     * @param equations right-hand side
     * @param start independent variable at the start
     * @param y state at the start; overwritten with the state at the end
     * @param end where to stop if no event comes first
     * @param events what to stop at, in the order of their indices
     * @param observer sees the accepted steps
     * @return where it ended
     * @throws NotConverged if the state is not finite or the steps run out
     */
    Stop integrate(Equations equations, double start, double[] y, double end, List<Event> events, Observer observer);

    /** @return evaluations of the right-hand side so far */
    int evaluations();
}
