package dev.penstock.errors;

import java.util.Locale;

/** A finished solution fails the audit of mass, energy, elements or shaft power: a defect, never a result. */
public final class ConservationViolated extends PenstockException {

    private static final long serialVersionUID = 1L;

    private final String law;
    private final double relativeError;

    /**
     * @param law what is not conserved and where
     * @param relativeError relative imbalance (-)
     * @param allowed largest relative imbalance accepted (-)
     */
    public ConservationViolated(String law, double relativeError, double allowed) {
        super(String.format(
                Locale.ROOT, "%s is out of balance by %.3g (relative); allowed is %.1g", law, relativeError, allowed));
        this.law = law;
        this.relativeError = relativeError;
    }

    /** @return what is not conserved and where */
    public String law() {
        return law;
    }

    /** @return relative imbalance (-) */
    public double relativeError() {
        return relativeError;
    }
}
