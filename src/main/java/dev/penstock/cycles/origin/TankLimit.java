package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;

/** Limits of a tank of a cycle without pumps. */
public enum TankLimit implements LimitKind {
    /** Pressure in the tank. */
    PRESSURE(Terms.shown("pressure_Pa")
            .boundBy(ConceptTables.LIMITS.of(EngineInputs.TANK_PRESSURE_LIMIT).path()));

    private final Terms terms;

    TankLimit(Terms terms) {
        this.terms = terms;
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
