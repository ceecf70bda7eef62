package dev.penstock.fluids;

/**
 * One state object inside CoolProp. Belongs to the thread that opened it; freed when it becomes unreachable. All methods
 * throw {@link dev.penstock.errors.PropertyFailure} with CoolProp's own message.
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

    /** @return the partial derivative of one quantity by another at a constant third, SI; always finite */
    double derivative(CoolPropOutput of, CoolPropOutput by, CoolPropOutput constant);

    /** Frees the state object; it must not be used again. */
    @Override
    void close();
}
