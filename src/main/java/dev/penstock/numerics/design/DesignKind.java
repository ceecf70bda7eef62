package dev.penstock.numerics.design;

import dev.penstock.provenance.Words;

/** How the points of a study lie between the ends of its inputs. */
public enum DesignKind {
    /** Sobol points, scrambled. */
    SOBOL,
    /** Latin hypercube. */
    LATIN_HYPERCUBE,
    /** Every combination of values of each input. */
    GRID;

    /** @return its name in files and options */
    public String key() {
        return Words.of(this);
    }
}
