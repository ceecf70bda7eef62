package dev.penstock.vehicle.ascent;

import dev.penstock.provenance.LimitKind;
import java.util.List;

/** Limits of an ascent. */
public enum AscentLimit implements LimitKind {
    /** Free-molecular heating of the bare payload, or at insertion. */
    HEATING("free_molecular_heating", "largest ρ w³/2 without fairing", List.of(), List.of(), List.of()),
    /** Dynamic pressure where stages part. */
    STAGING_DYNAMIC_PRESSURE(
            "staging_dynamic_pressure", "largest ρ v²/2 where stages part", List.of(), List.of(), List.of()),
    /** Dynamic pressure in flight. */
    DYNAMIC_PRESSURE("dynamic_pressure", "largest ρ v²/2", List.of(), List.of(), List.of()),
    /** Acceleration in flight. */
    ACCELERATION("acceleration", "largest (F − D)/m", List.of(), List.of(), List.of());

    private final Terms terms;

    AscentLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.terms = new Terms(key, equation, figures, inputs, bounds);
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
