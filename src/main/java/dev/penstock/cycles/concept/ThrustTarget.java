package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;
import dev.penstock.input.Belief;
import dev.penstock.input.Input;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;

/**
 * What fixes the size of an engine. Several chambers on one set of pumps share its thrust equally.
 *
 * @param kind which quantity is given
 * @param value thrust of the whole engine (N), or throat diameter of each chamber (m)
 * @param chambers number of thrust chambers
 */
public record ThrustTarget(Kind kind, double value, int chambers) {

    /** Most chambers that one set of pumps may feed. */
    public static final int MOST_CHAMBERS = 48;

    /** Quantities that can fix the size. */
    public enum Kind {
        VACUUM_THRUST("thrust_vacuum", Dimension.FORCE, Range.of(1, 1e8), "Thrust of the engine in vacuum", 500, 1e7),
        SEA_LEVEL_THRUST(
                "thrust_sea_level", Dimension.FORCE, Range.of(1, 1e8), "Thrust of the engine at sea level", 500, 1e7),
        THROAT_DIAMETER(
                "throat_diameter",
                Dimension.LENGTH,
                Range.of(5e-4, 5),
                "Diameter of the throat of each chamber",
                0.01,
                0.9);

        private final Input<Double> input;

        Kind(String key, Dimension dimension, Range range, String title, double smallest, double largest) {
            this.input = Input.quantity(key, dimension, range, title)
                    .computed("from the size given")
                    .believed(Belief.factors(smallest, largest));
        }

        /** @return the input that gives it */
        public Input<Double> input() {
            return input;
        }

        /** @return key in a concept file */
        public String key() {
            return input.key();
        }

        /** @return SI unit as text */
        public String unit() {
            return input.kind().unit();
        }
    }

    public ThrustTarget {
        Require.positive("engine size", kind.key() + " (" + kind.unit() + ")", value);
        Require.within("engine size", "chambers (-)", chambers, 1, MOST_CHAMBERS);
    }

    /** @return thrust of one chamber (N), or its throat diameter (m) */
    public double valueOfOne() {
        return kind == Kind.THROAT_DIAMETER ? value : value / chambers;
    }
}
