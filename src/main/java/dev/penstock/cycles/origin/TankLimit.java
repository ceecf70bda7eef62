package dev.penstock.cycles.origin;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;
import java.util.List;

/** Limits of a tank of a cycle without pumps. */
public enum TankLimit implements LimitKind {
    /** Pressure in the tank. */
    PRESSURE("pressure", "", List.of("pressure_Pa"), List.of(), List.of("limits.tank_pressure"));

    private final String key;
    private final String equation;
    private final List<String> figures;
    private final List<String> inputs;
    private final List<String> bounds;

    TankLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
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
        return "tanks." + Trail.slug(owner);
    }
}
