package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Supercritical oxygen in heated tubes.
 * <pre>
 * Nu = 0.0025 Re_b Pr_b^0.4 (ρ_b/ρ_w)^−0.5 (k_b/k_w)^0.5 (c̄p/cp_b)^(2/3) (p/p_cr)^−0.2 (1 + 2 D/x)
 * c̄p = (h_w − h_b)/(T_w − T_b)
 * </pre>
 * Source: [spencer-rousar-1977]. Holds for oxygen at 17 to 34.5 MPa with turbulent flow; closer to the inlet than 2 D the
 * value at 2 D is taken.
 */
public final class SpencerRousar implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.spencer-rousar",
            "Supercritical oxygen, Spencer and Rousar",
            "Nu = 0.0025 Re_b Pr_b^0.4 (rho_b/rho_w)^-0.5 (k_b/k_w)^0.5 (cp_mean/cp_b)^(2/3) (p/p_cr)^-0.2 (1 + 2 D/x)",
            "oxygen, p from 3 to 7 times critical, Re ≥ 1e4",
            "±30 % (from memory)",
            List.of("spencer-rousar-1977"));

    private static final double SHORTEST = 2;

    /**
     * @param reynolds Reynolds number, bulk properties (-)
     * @param prandtl Prandtl number, bulk properties (-)
     * @param densityRatio ρ_b/ρ_w (-)
     * @param conductivityRatio k_b/k_w (-)
     * @param heatCapacityRatio mean cp between wall and bulk over bulk cp (-)
     * @param pressureRatio pressure over critical pressure (-)
     * @param distance distance from the inlet over hydraulic diameter (-)
     * @return Nusselt number on bulk conductivity (-)
     */
    public static double nusselt(
            double reynolds,
            double prandtl,
            double densityRatio,
            double conductivityRatio,
            double heatCapacityRatio,
            double pressureRatio,
            double distance) {
        return 0.0025
                * reynolds
                * Math.pow(prandtl, 0.4)
                * Math.sqrt(conductivityRatio / densityRatio)
                * Math.cbrt(heatCapacityRatio * heatCapacityRatio)
                * Math.pow(pressureRatio, -0.2)
                * (1 + 2 / Math.max(SHORTEST, distance));
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public double nusselt(ChannelFlow flow) {
        return nusselt(
                flow.reynolds,
                flow.prandtl,
                flow.bulkDensity / flow.wallDensity,
                flow.bulkConductivity / flow.wallConductivity,
                flow.meanHeatCapacity() / flow.bulkHeatCapacity,
                flow.pressure / flow.criticalPressure,
                flow.distanceOverDiameter);
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        double ratio = flow.pressure / flow.criticalPressure;
        return flow.reynolds >= 1e4 && ratio >= 3 && ratio <= 7;
    }

    @Override
    public boolean needsWallProperties() {
        return true;
    }
}
