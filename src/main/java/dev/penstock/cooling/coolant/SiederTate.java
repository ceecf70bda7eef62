package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Turbulent heating of liquids whose viscosity changes across the boundary layer.
 * <pre>Nu = 0.027 Re^0.8 Pr^(1/3) (μ_b/μ_w)^0.14</pre>
 * Source: [sieder-tate-1936]; the form [nasa-sp-125] uses for kerosene jackets. Holds for Re ≥ 1e4,
 * 0.7 ≤ Pr ≤ 16 700, L/D ≥ 10, properties at the bulk temperature but μ_w.
 */
public final class SiederTate implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.sieder-tate",
            "Turbulent heating of liquids, Sieder and Tate",
            "Nu = 0.027 Re^0.8 Pr^(1/3) (mu_b/mu_w)^0.14",
            "Re ≥ 1e4, 0.7 ≤ Pr ≤ 16700, smooth wall",
            "±25 % (from memory)",
            List.of("sieder-tate-1936", "nasa-sp-125"));

    /**
     * @param reynolds Reynolds number on hydraulic diameter (-)
     * @param prandtl Prandtl number (-)
     * @param viscosityRatio viscosity in the bulk over that at the wall (-)
     * @return Nusselt number (-)
     */
    public static double nusselt(double reynolds, double prandtl, double viscosityRatio) {
        return 0.027 * Math.pow(reynolds, 0.8) * Math.cbrt(prandtl) * Math.pow(viscosityRatio, 0.14);
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public double nusselt(ChannelFlow flow) {
        return nusselt(flow.reynolds, flow.prandtl, flow.bulkViscosity / flow.wallViscosity);
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        return flow.reynolds >= 1e4 && flow.prandtl >= 0.7 && flow.prandtl <= 16_700;
    }

    @Override
    public boolean needsWallProperties() {
        return true;
    }
}
