package dev.penstock.cooling.march;

import java.util.EnumMap;
import java.util.Map;

/**
 * Where a sizing of channels begins that follows another of nearly the same case: heights, how the wall answers to them, and the
 * roots found there. It saves work; what is found does not depend on it.
 *
 * @param heights of the cells (m); 0 where none was found, infinite where only the largest allowed ended the search
 * @param slopes how the excess of each cell rises with the logarithm of its height (-); 0 where it is not known
 * @param roots of the searches that were needed
 */
public record SizingStart(double[] heights, double[] slopes, Map<Search, Root> roots) {

    /** What is searched for in turn ({@link ChannelSizing}). */
    enum Search {
        SLENDERNESS("height over width for half the pressure drop"),
        SHAPE("shape of channels for the pressure drop"),
        WALL_MARGIN("temperature of the wall for the pressure drop"),
        MOST_SLENDER("height of channels for the pressure drop");

        final String title;

        Search(String title) {
            this.title = title;
        }
    }

    /** A root, and how steep the function was there. */
    record Root(double value, double slope) {}

    /** Where nothing is known. */
    static SizingStart nowhere(int cells) {
        return new SizingStart(new double[cells], new double[cells], new EnumMap<>(Search.class));
    }

    /** The same, as a beginning that may be written on. */
    SizingStart copy() {
        return new SizingStart(heights.clone(), slopes.clone(), new EnumMap<>(roots));
    }
}
