package dev.penstock.provenance;

import dev.penstock.errors.Require;

/**
 * An efficiency, loss or limit that an estimate takes as a number while its true value is only known within bounds. The key
 * is the one a concept file sets it by, so that a study can vary it like any other input.
 *
 * @param key key in its table of the concept file, for example "efficiency_factor"
 * @param unit SI unit as text, "-" if it has none
 * @param spread bounds and most likely value, SI
 * @param source key into docs/sources.md, or "common practice, no source"
 */
public record UncertainInput(String key, String unit, Spread spread, String source) {

    public UncertainInput {
        Require.finite(key, unit, spread.mode());
        if (key.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("uncertain input " + key + " lacks its key or source");
        }
    }
}
