package dev.penstock.cooling.protection;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Coolant that has to seep through a porous wall to hold it at a temperature.
 * <pre>
 * h/h_0 = b/(e^b − 1),  b = ṁ" cp_c/h_0        film theory of the blown boundary layer
 * h (T_aw − T_w) = ṁ" cp_c (T_w − T_c)
 * so  ṁ" = (h_0/cp_c) ln[(T_aw − T_c)/(T_w − T_c)]
 * </pre>
 * The coolant leaves the wall at wall temperature. Sources: [mickley-1954], [kays-crawford-1993].
 */
public final class Transpiration {

    public static final ModelCard CARD = new ModelCard(
            "cooling.transpiration",
            "Transpiration through a porous wall",
            "m\" = (h0/cp) ln[(T_aw - T_c)/(T_w - T_c)]",
            "even blowing of a gas like the free stream",
            "±30 % (own judgement); light gases do better",
            List.of("mickley-1954", "kays-crawford-1993"));

    private Transpiration() {}

    /**
     * @param coefficient gas-side coefficient without blowing (W/(m²·K))
     * @param adiabatic adiabatic wall temperature (K)
     * @param wall wall temperature to be held (K)
     * @param coolant temperature of the coolant behind the wall (K)
     * @param heatCapacity mean cp of the coolant from there to the wall temperature, evaporation included (J/(kg·K))
     * @return coolant flow per area (kg/(m²·s))
     * @throws OutsideValidity unless coolant, wall and adiabatic wall temperature rise in that order
     */
    public static double massFlux(
            double coefficient, double adiabatic, double wall, double coolant, double heatCapacity) {
        if (!(coolant > 0 && wall > coolant && adiabatic > wall)) {
            throw new OutsideValidity(
                    "transpiration",
                    "wall temperature (K)",
                    wall,
                    "between the coolant's " + coolant + " K and the adiabatic wall's " + adiabatic + " K");
        }
        return coefficient / heatCapacity * Math.log((adiabatic - coolant) / (wall - coolant));
    }

    /**
     * @param blowing b = ṁ" cp_c/h_0 (-)
     * @return coefficient with blowing over that without (-)
     */
    public static double reduction(double blowing) {
        return Math.abs(blowing) < 1e-8 ? 1 - 0.5 * blowing : blowing / Math.expm1(blowing);
    }
}
