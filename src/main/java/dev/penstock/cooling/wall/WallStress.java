package dev.penstock.cooling.wall;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Stress in the wall between gas and coolant.
 * <pre>
 * channel   S_p = ½ Δp (w/t)²        floor as a plate clamped at both lands
 * tube      S_p = Δp d/(2 t)          hoop
 * both      S_t = E α q t/[2 (1 − ν) k]   temperature difference through the wall, held flat
 * land      S_l = p w/t_l            close-out held by the lands
 * </pre>
 * Δp coolant less gas pressure. S_p and S_l are primary and are held against yield; S_t is relieved by yielding and goes
 * into life. Source: [nasa-sp-125] eq. 4-27 (form from memory); plate bending from common practice.
 */
public final class WallStress {

    public static final ModelCard CARD = new ModelCard(
            "cooling.wall-stress",
            "Pressure and thermal stress in the wall",
            "S = dp (w/t)^2/2 (channel) or dp d/(2t) (tube); S_t = E alpha q t/[2(1-nu)k]",
            "elastic, thin wall, no bending moment from the tube's neighbours",
            "±20 % (own judgement)",
            List.of("nasa-sp-125"));

    private WallStress() {}

    /**
     * @param pressureDifference coolant less gas pressure (Pa)
     * @param width channel width (m)
     * @param thickness wall thickness (m)
     * @return bending stress of the channel floor (Pa)
     */
    public static double channelFloor(double pressureDifference, double width, double thickness) {
        double slenderness = width / thickness;
        return 0.5 * Math.abs(pressureDifference) * slenderness * slenderness;
    }

    /**
     * @param pressureDifference coolant less gas pressure (Pa)
     * @param diameter inner diameter of the tube (m)
     * @param thickness wall thickness (m)
     * @return hoop stress (Pa)
     */
    public static double tube(double pressureDifference, double diameter, double thickness) {
        return Math.abs(pressureDifference) * diameter / (2 * thickness);
    }

    /**
     * @param modulus Young's modulus (Pa)
     * @param expansion coefficient of expansion (1/K)
     * @param heatFlux heat flux (W/m²)
     * @param thickness wall thickness (m)
     * @param poissonRatio Poisson's ratio (-)
     * @param conductivity conductivity (W/(m·K))
     * @return elastic thermal stress at both faces (Pa)
     */
    public static double thermal(
            double modulus,
            double expansion,
            double heatFlux,
            double thickness,
            double poissonRatio,
            double conductivity) {
        return modulus * expansion * Math.abs(heatFlux) * thickness / (2 * (1 - poissonRatio) * conductivity);
    }

    /**
     * @param pressure coolant pressure (Pa)
     * @param width channel width (m)
     * @param land land width (m)
     * @return tension in the land (Pa)
     */
    public static double land(double pressure, double width, double land) {
        return pressure * width / land;
    }
}
