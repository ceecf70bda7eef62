package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Curvature of the throat: secondary flow raises friction and, on the concave side, heat transfer.
 * <pre>
 * factor = max(1, [Re (r_h/R_c)²]^0.05)
 * away from the throat   1 + s (factor − 1),  s = [1 − ((A/A_t − 1)/0.5)²]²  up to A/A_t = 1.5
 * </pre>
 * r_h is half the hydraulic diameter, R_c the radius of curvature of the passage. At the throat the centre of curvature
 * lies outside the chamber, so the heated floor is the outer, concave side of the bend and gains. Source: [ito-1959], as
 * used for cooling jackets by [taylor-1968]. The sources give it above a product of 6 and 1 below, a step of 9 %; here the power
 * law goes on to the straight channel, since the effect fades and does not break off. Along the wall it fades with value and slope, s, own
 * choice: channels that follow it have no kink, and a wall that is held at some places is no hotter between them.
 */
public final class CurvedChannel {

    public static final ModelCard CARD = new ModelCard(
            "cooling.curvature",
            "Curved passage, Ito",
            "factor = max(1, [Re (r_h/R_c)^2]^0.05); its excess over 1 fades with [1 - ((A/A_t - 1)/0.5)^2]^2",
            "turbulent flow, Re (r/R)² from 6 to 1e4",
            "not stated",
            List.of("ito-1959", "taylor-1968"));

    /** Area ratio over one at which the channel is straight again (-): about where the round part of a throat ends. Own choice. */
    private static final double STRAIGHT = 0.5;

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

    /**
     * @param areaRatio area ratio of a place on either side of the throat (-)
     * @return how much of the effect of curvature at the throat there is (-): 1 at the throat, 0 from 1.5 on
     */
    public static double fading(double areaRatio) {
        double away = (areaRatio - 1) / STRAIGHT;
        double left = Math.max(0, 1 - away * away);
        return left * left;
    }
}
