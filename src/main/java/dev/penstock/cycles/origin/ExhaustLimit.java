package dev.penstock.cycles.origin;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.provenance.LimitKind;

/** Limits of turbine gas that is dumped. */
public enum ExhaustLimit implements LimitKind {
    /** What it costs of the specific impulse. */
    IMPULSE_LOSS(Terms.made(
                    "1 − Isp of the engine over the better Isp of its chamber and of such a chamber that burns all that leaves the tanks, in"
                            + " vacuum; less Σ ṁᵢ(1 − cᵢ/c)/ṁ of coolant that is dumped",
                    "isp_vacuum_s",
                    "mass_flow_kg_s",
                    "mixture_ratio",
                    "chamber_mixture_ratio")
            .boundBy(ConceptTables.LIMITS.of(EngineInputs.EXHAUST_LOSS_LIMIT).path()));

    /** Part that these limits are held against. */
    public static final String OWNER = "turbine exhaust";

    private final Terms terms;

    ExhaustLimit(Terms terms) {
        this.terms = terms;
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public String path(String owner) {
        return "engine";
    }
}
