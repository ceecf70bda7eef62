package dev.penstock.errors;

import java.util.Locale;

/** A model was asked for a value where its equation has no meaning. */
public final class OutsideValidity extends PenstockException {

    private static final long serialVersionUID = 1L;

    private final String model;
    private final String quantity;
    private final double value;

    /**
     * @param model name of the model
     * @param quantity quantity with its SI unit, for example "pressure (Pa)"
     * @param value offending value, SI
     * @param allowed the range, as text with its unit
     */
    public OutsideValidity(String model, String quantity, double value, String allowed) {
        this(FailureSubject.MODEL, model, quantity, value, allowed);
    }

    /**
     * @param subject what could not be solved
     * @param model name of the model
     * @param quantity quantity with its SI unit, for example "pressure (Pa)"
     * @param value offending value, SI
     * @param allowed the range, as text with its unit
     */
    public OutsideValidity(FailureSubject subject, String model, String quantity, double value, String allowed) {
        super(String.format(Locale.ROOT, "%s: %s is %.6g; allowed is %s", model, quantity, value, allowed), subject);
        this.model = model;
        this.quantity = quantity;
        this.value = value;
    }

    /** @return name of the model */
    public String model() {
        return model;
    }

    /** @return quantity with its SI unit */
    public String quantity() {
        return quantity;
    }

    /** @return offending value, SI */
    public double value() {
        return value;
    }
}
