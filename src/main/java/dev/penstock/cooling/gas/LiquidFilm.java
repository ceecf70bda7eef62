package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * A liquid film on the wall: it holds the wall near its boiling point until it has evaporated, and cools as a vapour film
 * after that.
 * <pre>
 * used up where  ∫ [h_g (T_aw − T_s) + q_rad] dA = η_f ṁ_f (h_v − h_in)      T_s boiling temperature
 * beyond         (T_aw − T_aw,film)/(T_aw − T_s) = exp[−h_g A/(ṁ_f cp_v)]     A from the end of the liquid
 * </pre>
 * Above the critical pressure the pseudo-critical temperature takes the place of boiling, and the enthalpy to a tenth above
 * it that of evaporation. η_f is the share that stays on the wall (0.3 to 0.7, the rest is stripped off). Sources:
 * [grisson-1991] for the balance, [nasa-sp-125] eq. 4-34 for the vapour; mixing of vapour and gas in the form without a
 * fitted factor.
 */
public final class LiquidFilm {

    public static final ModelCard CARD = new ModelCard(
            "cooling.liquid-film",
            "Liquid film with evaporation length",
            "int q dA = eta m (h_v - h_in); beyond: exp[-h A/(m cp_v)]",
            "film thin against the chamber, wall wetted evenly",
            "±40 % in length (from memory: efficiencies of 0.3 to 0.7 are reported)",
            List.of("grisson-1991", "nasa-sp-125"));

    private LiquidFilm() {}

    /**
     * @param exchange h_g A/(ṁ cp) of the vapour from the end of the liquid to the station (-)
     * @return effectiveness of the vapour film (-)
     */
    public static double vapourEffectiveness(double exchange) {
        return Math.exp(-Math.max(0, exchange));
    }
}
