package dev.penstock.vehicle.ascent;

import dev.penstock.provenance.LimitKind;
import java.util.List;

/** Limits of an ascent. */
public enum AscentLimit implements LimitKind {
    /** Dynamic pressure where stages part. */
    STAGING_DYNAMIC_PRESSURE(
            "staging_dynamic_pressure", "largest ρ v²/2 where stages part", List.of(), List.of(), List.of()),
    /** Dynamic pressure in flight. */
    DYNAMIC_PRESSURE("dynamic_pressure", "largest ρ v²/2", List.of(), List.of(), List.of()),
    /** Acceleration in flight. */
    ACCELERATION("acceleration", "largest (F − D)/m", List.of(), List.of(), List.of());

    private final String key;
    private final String equation;
    private final List<String> figures;
    private final List<String> inputs;
    private final List<String> bounds;

    AscentLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.key = key;
        this.equation = equation;
        this.figures = figures;
        this.inputs = inputs;
        this.bounds = bounds;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String equation() {
        return equation;
    }

    @Override
    public List<String> figures() {
        return figures;
    }

    @Override
    public List<String> inputs() {
        return inputs;
    }

    @Override
    public List<String> bounds() {
        return bounds;
    }

    @Override
    public String path(String owner) {
        return owner;
    }
}
