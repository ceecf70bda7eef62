package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;
import java.util.List;

/** Limits of a tank of a cycle without pumps. */
public enum TankLimit implements LimitKind {
    /** Pressure in the tank. */
    PRESSURE(
            "pressure",
            "",
            List.of("pressure_Pa"),
            List.of(),
            List.of(ConceptTables.LIMITS.of(EngineInputs.TANK_PRESSURE_LIMIT).path()));

    private final Terms terms;

    TankLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.terms = new Terms(key, equation, figures, inputs, bounds);
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public String path(String owner) {
        return "tanks." + Trail.slug(owner);
    }
}
