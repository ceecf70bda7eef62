package dev.penstock.fluids.coolprop;

import java.util.Deque;

/** A state object that goes back to its thread's spare ones when it is closed, and answers to nobody after that. */
final class LentHandle implements CoolPropHandle {

    private static final int MOST_SPARE = 4;

    private final String fluid;
    private final Deque<CoolPropHandle> spare;
    private CoolPropHandle lent;

    /**
     * @param fluid id of the fluid, for messages
     * @param lent state object
     * @param spare spare ones of the thread
     */
    LentHandle(String fluid, CoolPropHandle lent, Deque<CoolPropHandle> spare) {
        this.fluid = fluid;
        this.lent = lent;
        this.spare = spare;
    }

    private CoolPropHandle lent() {
        if (lent == null) {
            throw new IllegalStateException("this state of " + fluid + " is closed");
        }
        return lent;
    }

    @Override
    public void update(CoolPropInputs inputs, double first, double second) {
        lent().update(inputs, first, second);
    }

    @Override
    public double output(CoolPropOutput key) {
        return lent().output(key);
    }

    @Override
    public double[] evaluate(CoolPropInputs inputs, double[] first, double[] second, CoolPropOutput... wanted) {
        return lent().evaluate(inputs, first, second, wanted);
    }

    @Override
    public void close() {
        if (lent == null) {
            return;
        }
        if (spare.size() < MOST_SPARE) {
            spare.addLast(lent);
        } else {
            lent.close();
        }
        lent = null;
    }
}
