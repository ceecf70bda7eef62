package dev.penstock.errors;

/** A property library or correlation gave no state for a fluid. */
public final class PropertyFailure extends PenstockException {

    private static final long serialVersionUID = 1L;

    private final String fluid;
    private final String inputs;

    /**
     * @param fluid fluid id
     * @param inputs the state asked for, with units, for example "p = 1e7 Pa, T = 80 K"
     * @param reason the library's own message, or ours
     */
    public PropertyFailure(String fluid, String inputs, String reason) {
        super("no state of " + fluid + " at " + inputs + ": " + reason);
        this.fluid = fluid;
        this.inputs = inputs;
    }

    /** @return fluid id */
    public String fluid() {
        return fluid;
    }

    /** @return the state that was asked for */
    public String inputs() {
        return inputs;
    }
}
