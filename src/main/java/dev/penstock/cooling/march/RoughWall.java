package dev.penstock.cooling.march;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * How much more heat a rough passage takes up than the smooth one that the correlations are of.
 * <pre>Nu/Nu_smooth = (f/f_smooth)^0.6,  f/f_smooth at most 4</pre>
 * Norris has 0.68 Pr^0.215 as exponent, which is 0.6 to 0.7 in gases and more in liquids, and no gain beyond a fourfold friction; 0.6 is
 * taken for all, the low end. Source: [norris-1970], from memory.
 */
public final class RoughWall {

    public static final ModelCard CARD = new ModelCard(
            "cooling.rough-wall",
            "Heat transfer in a rough passage",
            "Nu/Nu_smooth = (f/f_smooth)^0.6, f/f_smooth at most 4",
            "turbulent, roughness as grains of sand",
            "±20 % of the gain (own judgement)",
            List.of("norris-1970"));

    private static final double EXPONENT = 0.6;
    private static final double MOST = 4;

    private RoughWall() {}

    /**
     * @param frictionRatio friction factor over that of the smooth passage (-)
     * @return coefficient over that of the smooth passage (-)
     */
    public static double factor(double frictionRatio) {
        return Math.pow(Math.min(MOST, Math.max(1, frictionRatio)), EXPONENT);
    }
}
