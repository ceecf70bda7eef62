package dev.penstock.numerics;

import dev.penstock.errors.NotConverged;
import dev.penstock.numerics.OdeIntegrator.Equations;
import dev.penstock.numerics.OdeIntegrator.Event;
import dev.penstock.numerics.OdeIntegrator.Observer;
import dev.penstock.numerics.OdeIntegrator.Stop;
import java.util.List;

/** Follows y' = f(t, y) from a state to an end or to the first of some events. */
public interface InitialValueSolver {

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
