package dev.penstock.turbomachinery.metal;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;

/**
 * What hydrogen outside a metal takes off its notched strength while it is loaded.
 * <pre>
 * R(p) = 1 - (1 - R_test) √(x_H2 p / p_test)
 * </pre>
 * The loss goes with the root of the pressure, as the hydrogen dissolved at the surface does (Sieverts); tests of
 * [chandler-walter-1974, from memory] follow that within their scatter. Classes by R as in [nasa-tm-2016-218602, from
 * memory]. Tests are at room temperature, where most alloys suffer most; below {@link #COLDEST} hydrogen hardly enters, and
 * above some 700 K it harms less, but every hot part passes through the worst at start and stop, so that the ratio of room
 * temperature is held at any higher one. Cycles, welds and long loads are worse than the short test.
 */
public final class HydrogenEmbrittlement {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.hydrogen-embrittlement",
            "Notched strength in hydrogen",
            "R = 1 - (1 - R_test) √(x_H2 p / p_test)",
            "hydrogen and gas that holds it from 150 K up, to 100 MPa; short tensile tests at room temperature",
            "0.1 on the ratio between heats and notches; cycles and welds are worse",
            List.of("chandler-walter-1974", "nasa-tm-2016-218602"));

    /** Least ratio that is borne: below it the class is extreme, not to be used [nasa-tm-2016-218602, from memory]. */
    static final double LEAST = 0.5;

    /** Ratio below which a part asks for a barrier or for fracture mechanics: class severe [as above]. */
    static final double DOUBTFUL = 0.7;

    /** Colder hydrogen hardly enters a metal (K), from memory. */
    static final double COLDEST = 150;

    /** Class of an alloy at a pressure, by its strength ratio. */
    public enum HarmClass {
        NEGLIGIBLE(0.97),
        SMALL(0.90),
        HIGH(DOUBTFUL),
        SEVERE(LEAST),
        EXTREME(Double.NEGATIVE_INFINITY);

        private final double least;

        HarmClass(double least) {
            this.least = least;
        }

        /** @return name for people */
        public String title() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * @param strengthRatio notched strength in hydrogen over that without (-)
         * @return its class
         */
        public static HarmClass of(double strengthRatio) {
            for (HarmClass harm : values()) {
                if (strengthRatio >= harm.least) {
                    return harm;
                }
            }
            throw new IllegalArgumentException("strength ratio " + strengthRatio);
        }
    }

    private HydrogenEmbrittlement() {}

    /**
     * @param test test of an alloy
     * @param partialPressure partial pressure of hydrogen (Pa)
     * @return notched strength there over that without hydrogen (-)
     */
    static double strengthRatio(AlloyFamily.HydrogenTest test, double partialPressure) {
        return 1 - (1 - test.strengthRatio()) * Math.sqrt(partialPressure / test.pressure());
    }
}
