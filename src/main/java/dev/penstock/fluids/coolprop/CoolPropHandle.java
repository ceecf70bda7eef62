package dev.penstock.fluids.coolprop;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.numerics.Cancellation;
import java.util.Arrays;

/**
 * One state object inside CoolProp. Belongs to the thread that opened it; freed when it becomes unreachable. All methods
 * but {@link #evaluate} throw {@link PropertyFailure} with CoolProp's own message.
 */
interface CoolPropHandle extends AutoCloseable {

    /**
     * Moves the state. A failed search inside CoolProp can leave a phase imposed, which would falsify later states;
     * implementations lift it.
     *
     * @param inputs kind of the two values
     * @param first first value, SI
     * @param second second value, SI
     */
    void update(CoolPropInputs inputs, double first, double second);

    /** @return a quantity of the present state, SI; always finite */
    double output(CoolPropOutput key);

    /**
     * Moves through many states, reading the same quantities at each; the same as {@link #update} and {@link #output}
     * by turns, but at once where asking costs more than answering. Leaves the state anywhere.
     *
     * @param inputs kind of the two values
     * @param first first values, SI
     * @param second second values, SI, as many
     * @param wanted quantities
     * @return quantity {@code k} of state {@code i} at {@code i * wanted.length + k}; all of a state are NaN if any failed
     */
    default double[] evaluate(CoolPropInputs inputs, double[] first, double[] second, CoolPropOutput... wanted) {
        double[] values = new double[first.length * wanted.length];
        for (int i = 0; i < first.length; i++) {
            Cancellation.check();
            int start = i * wanted.length;
            try {
                update(inputs, first[i], second[i]);
                for (int k = 0; k < wanted.length; k++) {
                    values[start + k] = output(wanted[k]);
                }
            } catch (PropertyFailure e) {
                Arrays.fill(values, start, start + wanted.length, Double.NaN);
            }
        }
        return values;
    }

    /** Frees the state object; it must not be used again. */
    @Override
    void close();
}
