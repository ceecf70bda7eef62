package dev.penstock.turbomachinery.metal;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Whether a metal, once something has lit it, burns on in oxygen: partial pressure of oxygen over the threshold of a rod.
 * <pre>
 * φ = x_O2 p / p_threshold     burns on above 1
 * </pre>
 * Source of thresholds: rods of 3.2 mm burning upward in still oxygen at room temperature (the kind of test of ASTM G124)
 * [astm-mnl36, from memory]. Hot and streaming gas, thin edges and rubs lower them; how far is not published for most
 * alloys, so that a part within {@link #HOT} of its threshold is in doubt. Taking the partial pressure is on the safe side:
 * what dilutes the oxygen takes up heat besides. Cold liquid is not covered ({@link #COLDEST}).
 */
public final class PromotedCombustion {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.promoted-combustion",
            "Promoted combustion of metals in oxygen",
            "φ = x_O2 p / p_threshold, burns on above 1",
            "oxygen and oxygen-rich gas from 150 K up; thresholds are of rods of 3.2 mm at room temperature",
            "hot streaming gas lowers thresholds, by an unpublished factor; 2 is common practice, no source",
            List.of("astm-mnl36", "common practice, no source"));

    /** What hot gas may take off a threshold (-), common practice, no source. */
    static final double HOT = 2;

    /** Colder oxygen is a liquid, whose thresholds are others (K): near the critical temperature, 154.6 K. */
    static final double COLDEST = 150;

    private PromotedCombustion() {}

    /**
     * @param test test of an alloy
     * @param partialPressure partial pressure of oxygen (Pa)
     * @return that over the alloy's threshold (-)
     */
    static double ratio(AlloyFamily.OxygenTest test, double partialPressure) {
        return partialPressure / test.threshold();
    }
}
