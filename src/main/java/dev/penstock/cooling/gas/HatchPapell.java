package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Effectiveness of a gaseous film injected through a slot along the wall.
 * <pre>
 * ln η = −[h_g A/(ṁ_c cp_c) − 0.04] (s V_g/α_c)^0.125 f(V_g/V_c)
 * f = 1 + 0.4 atan(V_g/V_c − 1)             V_g ≥ V_c
 * f = (V_c/V_g)^(1.5 (V_c/V_g − 1))         V_g &lt; V_c
 * η = (T_aw − T_aw,film)/(T_aw − T_c)
 * </pre>
 * A wall area from slot to station, s slot height, α_c thermal diffusivity of the film gas at injection, V velocities of
 * gas and film. η is held at 1 near the slot. Source: [hatch-papell-1959]; constants and the side of
 * each branch from memory; either way f is 1 at equal velocities and grows with the difference.
 */
public final class HatchPapell {

    public static final ModelCard CARD = new ModelCard(
            "cooling.hatch-papell",
            "Gaseous film, Hatch and Papell",
            "ln eta = -[h A/(m cp) - 0.04] (s Vg/alpha)^0.125 f(Vg/Vc)",
            "tangential slot, velocity ratio near 1, no strong acceleration",
            "±25 % in the exponent (from memory)",
            List.of("hatch-papell-1959"));

    private HatchPapell() {}

    /**
     * @param gasVelocity velocity of the free stream (m/s)
     * @param filmVelocity velocity of the film at its slot (m/s)
     * @return velocity factor f (-)
     */
    public static double velocityFactor(double gasVelocity, double filmVelocity) {
        double ratio = filmVelocity / gasVelocity;
        return ratio <= 1 ? 1 + 0.4 * Math.atan(1 / ratio - 1) : Math.pow(ratio, 1.5 * (ratio - 1));
    }

    /**
     * @param exchange h_g A/(ṁ_c cp_c) from slot to station (-)
     * @param slotGroup s V_g/α_c (-)
     * @param velocityFactor velocity factor (-)
     * @return effectiveness (-), between 0 and 1
     */
    public static double effectiveness(double exchange, double slotGroup, double velocityFactor) {
        double exponent = (exchange - 0.04) * Math.pow(slotGroup, 0.125) * velocityFactor;
        return Math.exp(-Math.max(0, exponent));
    }
}
