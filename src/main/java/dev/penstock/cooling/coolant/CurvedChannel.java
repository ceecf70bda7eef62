package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Curvature of the throat: secondary flow raises friction and, on the concave side, heat transfer.
 * <pre>factor = max(1, [Re (r_h/R_c)²]^0.05)</pre>
 * r_h is half the hydraulic diameter, R_c the radius of curvature of the passage. At the throat the centre of curvature
 * lies outside the chamber, so the heated floor is the outer, concave side of the bend and gains. Source: [ito-1959], as
 * used for cooling jackets by [taylor-1968]. The sources give it above a product of 6 and 1 below, a step of 9 %; here the power
 * law goes on to the straight channel, since the effect fades and does not break off.
 */
public final class CurvedChannel {

    public static final ModelCard CARD = new ModelCard(
            "cooling.curvature",
            "Curved passage, Ito",
            "factor = max(1, [Re (r_h/R_c)^2]^0.05)",
            "turbulent flow, Re (r/R)² from 6 to 1e4",
            "not stated",
            List.of("ito-1959", "taylor-1968"));

    private CurvedChannel() {}

    /**
     * @param reynolds Reynolds number on hydraulic diameter (-)
     * @param radiusRatio half the hydraulic diameter over radius of curvature (-)
     * @return factor on friction, and on heat transfer at the concave side (-), at least 1
     */
    public static double factor(double reynolds, double radiusRatio) {
        double product = reynolds * radiusRatio * radiusRatio;
        return product > 1 ? Math.pow(product, 0.05) : 1;
    }
}
