package dev.penstock.turbomachinery.metal;

import dev.penstock.provenance.LimitKind;

/** Limits of metals in oxygen and hydrogen: those of the part that is nearest to its own. */
public enum MetalLimit implements LimitKind {
    /** Partial pressure of oxygen over the threshold of promoted combustion. */
    OXYGEN_OVER_THRESHOLD(Terms.shown("oxygen_over_threshold")),
    /** Notched strength in hydrogen over that without. */
    STRENGTH_IN_HYDROGEN(Terms.shown("strength_in_hydrogen"));

    /** Part that these limits are held against. */
    public static final String OWNER = "metals";

    private final Terms terms;

    MetalLimit(Terms terms) {
        this.terms = terms;
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public String path(String owner) {
        return OWNER;
    }
}
