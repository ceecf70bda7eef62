package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Fluids above their critical pressure, with the swing of properties across the pseudo-critical temperature T_pc.
 * <pre>
 * Nu = 0.0183 Re_b^0.82 Pr_b^0.5 (ρ_w/ρ_b)^0.3 (c̄p/cp_b)^n,   c̄p = (h_w − h_b)/(T_w − T_b)
 * n = 0.4                                              T_b < T_w < T_pc  or  1.2 T_pc < T_b < T_w
 * n = 0.4 + 0.2 (T_w/T_pc − 1)                          T_b < T_pc < T_w
 * n = 0.4 + 0.2 (T_w/T_pc − 1) [1 − 5 (T_b/T_pc − 1)]   T_pc < T_b < 1.2 T_pc
 * </pre>
 * Source: [jackson-hall-1979]; fitted to water and carbon dioxide, in use for methane. Normal turbulent heat transfer: it
 * does not foresee deterioration, which {@code DeteriorationOnset} watches for.
 */
public final class Jackson implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.jackson",
            "Supercritical fluids, Jackson and Hall",
            "Nu = 0.0183 Re_b^0.82 Pr_b^0.5 (rho_w/rho_b)^0.3 (cp_mean/cp_b)^n",
            "p above critical, Re ≥ 1e4, no deterioration",
            "±25 % (from memory)",
            List.of("jackson-hall-1979"));

    /**
     * @param wall wall temperature (K)
     * @param bulk bulk temperature (K)
     * @param pseudoCritical pseudo-critical temperature (K)
     * @return exponent of the heat capacity ratio (-)
     */
    public static double exponent(double wall, double bulk, double pseudoCritical) {
        double above = Math.max(0, wall / pseudoCritical - 1);
        double bulkAbove = Math.min(0.2, Math.max(0, bulk / pseudoCritical - 1));
        return 0.4 + 0.2 * above * (1 - 5 * bulkAbove);
    }

    /**
     * @param reynolds Reynolds number, bulk properties (-)
     * @param prandtl Prandtl number, bulk properties (-)
     * @param densityRatio ρ_w/ρ_b (-)
     * @param heatCapacityRatio mean cp between wall and bulk over bulk cp (-)
     * @param exponent exponent of the heat capacity ratio (-)
     * @return Nusselt number on bulk conductivity (-)
     */
    public static double nusselt(
            double reynolds, double prandtl, double densityRatio, double heatCapacityRatio, double exponent) {
        return 0.0183
                * Math.pow(reynolds, 0.82)
                * Math.sqrt(prandtl)
                * Math.pow(densityRatio, 0.3)
                * Math.pow(heatCapacityRatio, exponent);
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
                flow.wallDensity / flow.bulkDensity,
                flow.meanHeatCapacity() / flow.bulkHeatCapacity,
                exponent(flow.wallTemperature, flow.bulkTemperature, flow.pseudoCriticalTemperature));
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        return flow.reynolds >= 1e4 && flow.pressure > flow.criticalPressure;
    }

    @Override
    public boolean needsWallProperties() {
        return true;
    }
}
