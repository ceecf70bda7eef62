package dev.penstock.turbomachinery.metal;

import dev.penstock.provenance.LimitKind;
import java.util.List;

/** Limits of metals in oxygen and hydrogen: those of the part that is nearest to its own. */
public enum MetalLimit implements LimitKind {
    /** Partial pressure of oxygen over the threshold of promoted combustion. */
    OXYGEN("oxygen_over_threshold"),
    /** Notched strength in hydrogen over that without. */
    HYDROGEN("strength_in_hydrogen");

    /** Part that these limits are held against. */
    public static final String OWNER = "metals";

    private final Terms terms;

    MetalLimit(String key) {
        this.terms = new Terms(key, "", List.of(key), List.of(), List.of());
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
