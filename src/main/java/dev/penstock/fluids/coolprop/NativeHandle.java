package dev.penstock.fluids.coolprop;

import dev.penstock.errors.PropertyFailure;
import java.lang.ref.Cleaner;
import java.util.Map;

/**
 * A state object inside CoolProp in this process, whichever of its interfaces it was made by: what differs is where a call leaves its
 * failure. Freed by its cleaner, which must not know it.
 */
abstract class NativeHandle implements CoolPropHandle {

    /**
     * Calls on one state object, whose first argument is set.
     *
     * @param update pair of inputs and two values
     * @param keyedOutput number of a quantity
     * @param partialDerivative numbers of three quantities
     * @param unspecifyPhase no further argument
     */
    record Calls(NativeCall update, NativeCall keyedOutput, NativeCall partialDerivative, NativeCall unspecifyPhase) {}

    private final String fluid;
    private final Calls calls;
    private final Map<CoolPropInputs, Long> inputs;
    private final Map<CoolPropOutput, Long> outputs;
    private Cleaner.Cleanable freedBy;
    private boolean closed;
    private CoolPropInputs lastInputs = CoolPropInputs.PRESSURE_TEMPERATURE;
    private double first;
    private double second;

    NativeHandle(String fluid, Calls calls, Map<CoolPropInputs, Long> inputs, Map<CoolPropOutput, Long> outputs) {
        this.fluid = fluid;
        this.calls = calls;
        this.inputs = inputs;
        this.outputs = outputs;
    }

    /** @return whether the last update failed */
    abstract boolean updateFailed();

    /** @return whether the last output failed in another way than by its number */
    abstract boolean outputFailed();

    /** @return what CoolProp said last, which is then forgotten */
    abstract String reason();

    /** @return this handle, freed by an action that does not know it */
    NativeHandle freedBy(Runnable action) {
        freedBy = CoolPropLibrary.CLEANER.register(this, action);
        return this;
    }

    @Override
    public final void close() {
        closed = true;
        freedBy.clean();
    }

    @Override
    public final void update(CoolPropInputs pair, double a, double b) {
        if (closed) {
            throw new IllegalStateException("this state of " + fluid + " is closed");
        }
        lastInputs = pair;
        first = a;
        second = b;
        calls.update.with(1, inputs.get(pair)).with(2, a).with(3, b).call();
        if (updateFailed()) {
            String message = reason();
            calls.unspecifyPhase.call();
            throw new PropertyFailure(fluid, pair.describe(a, b), message);
        }
    }

    @Override
    public final double output(CoolPropOutput key) {
        if (!key.isDerivative()) {
            return finite(calls.keyedOutput.with(1, outputs.get(key)).call().doubleResult(), key);
        }
        for (int part = 0; part < 3; part++) {
            calls.partialDerivative.with(1 + part, outputs.get(key.part(part)));
        }
        return finite(calls.partialDerivative.call().doubleResult(), key);
    }

    private double finite(double value, CoolPropOutput key) {
        if (outputFailed() || !(Math.abs(value) < CoolPropLibrary.HUGE)) {
            throw new PropertyFailure(fluid, lastInputs.describe(first, second), key + ": " + reason());
        }
        return value;
    }
}
