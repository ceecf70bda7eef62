package dev.penstock.claims.prior;

import dev.penstock.input.InputKind;
import dev.penstock.quantities.Notation;

/**
 * An input that is not certain.
 *
 * @param path dotted path
 * @param title what it is
 * @param kind what it measures
 * @param prior what is believed of it
 */
public record Unknown(String path, String title, InputKind.Quantity kind, Prior prior) {

    /** @return how people read it */
    public Notation notation() {
        return Notation.ofUnit(kind.unit());
    }

    /**
     * @param value a value, SI
     * @return it as a change of a concept file, every bit of it
     */
    public String written(double value) {
        return kind.change(value);
    }

    /**
     * @param normal coordinate in the standard normal space
     * @param model value that the calculation finds by itself, SI
     * @return its value, SI, within what is allowed
     */
    public double value(double normal, double model) {
        double value = prior.value(normal, model);
        return Math.max(kind.range().low(), Math.min(kind.range().high(), value));
    }
}
