package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;

/**
 * What fixes the size of an engine.
 *
 * @param kind which quantity is given
 * @param value thrust of the whole engine (N), or throat diameter (m)
 */
public record ThrustTarget(Kind kind, double value) {

    /** Quantities that can fix the size. */
    public enum Kind {
        VACUUM_THRUST("thrust_vacuum", "N"),
        SEA_LEVEL_THRUST("thrust_sea_level", "N"),
        THROAT_DIAMETER("throat_diameter", "m");

        private final String key;
        private final String unit;

        Kind(String key, String unit) {
            this.key = key;
            this.unit = unit;
        }

        /** @return key in a concept file */
        public String key() {
            return key;
        }

        /** @return SI unit as text */
        public String unit() {
            return unit;
        }
    }

    public ThrustTarget {
        Require.positive("engine size", kind.key() + " (" + kind.unit() + ")", value);
    }
}
