package dev.penstock.chamber.design;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Contraction ratio of built chambers over the size of their throat: small chambers are wide, so that they are not all length,
 * large ones narrow.
 * <pre>A_c/A_t = 8.0 D_t^-0.6 + 1.25     D_t in cm</pre>
 */
public final class ContractionRatio {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "chamber.contraction-ratio",
            "Usual contraction ratio",
            "A_c/A_t = 8.0 D_t^-0.6 + 1.25, D_t in cm",
            "throats of 1 to 100 cm; at most 10",
            "30 % (from memory)",
            List.of("humble-1995"));

    private static final double WIDEST = 10;

    private ContractionRatio() {}

    /**
     * @param throatDiameter D_t (m)
     * @return contraction ratio (-)
     * @throws dev.penstock.errors.OutsideValidity if the diameter is not positive
     */
    public static double usual(double throatDiameter) {
        double centimetres = 100 * Require.positive(CARD.id(), "throat diameter (m)", throatDiameter);
        return Math.min(8.0 * Math.pow(centimetres, -0.6) + 1.25, WIDEST);
    }
}
