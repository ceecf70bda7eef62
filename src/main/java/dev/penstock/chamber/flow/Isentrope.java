package dev.penstock.chamber.flow;

import dev.penstock.combustion.WorkingState;

/** States of one gas at one entropy, by pressure: all that a one-dimensional loss-free nozzle flow asks of a gas. */
@FunctionalInterface
public interface Isentrope {

    /**
     * @param pressure absolute pressure (Pa)
     * @return state at that pressure and the entropy of the flow
     */
    WorkingState at(double pressure);
}
