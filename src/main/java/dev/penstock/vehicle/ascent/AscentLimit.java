package dev.penstock.vehicle.ascent;

import dev.penstock.provenance.LimitKind;

/** Limits of an ascent. */
public enum AscentLimit implements LimitKind {
    /** Free-molecular heating of the bare payload, or at insertion. */
    FREE_MOLECULAR_HEATING(Terms.made("largest ρ w³/2 without fairing")),
    /** Dynamic pressure where stages part. */
    STAGING_DYNAMIC_PRESSURE(Terms.made("largest ρ v²/2 where stages part")),
    /** Dynamic pressure in flight. */
    DYNAMIC_PRESSURE(Terms.made("largest ρ v²/2")),
    /** Acceleration in flight. */
    ACCELERATION(Terms.made("largest (F − D)/m"));

    private final Terms terms;

    AscentLimit(Terms terms) {
        this.terms = terms;
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public String path(String owner) {
        return owner;
    }
}
