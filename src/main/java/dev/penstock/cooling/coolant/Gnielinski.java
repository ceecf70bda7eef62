package dev.penstock.cooling.coolant;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Turbulent and transitional flow in a tube.
 * <pre>
 * Nu = (f/8)(Re − 1000) Pr / [1 + 12.7 √(f/8) (Pr^(2/3) − 1)]
 * f  = (0.79 ln Re − 1.64)^−2        Darcy, smooth tube (Petukhov)
 * </pre>
 * Source: [gnielinski-1976]. Holds for 3000 ≤ Re ≤ 5e6, 0.5 ≤ Pr ≤ 2000, bulk properties; not near a pseudo-critical
 * temperature.
 */
public final class Gnielinski implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.gnielinski",
            "Turbulent flow in a tube, Gnielinski",
            "Nu = (f/8)(Re-1000)Pr / [1 + 12.7 sqrt(f/8) (Pr^(2/3)-1)], f = (0.79 ln Re - 1.64)^-2 (Darcy)",
            "3000 ≤ Re ≤ 5e6, 0.5 ≤ Pr ≤ 2000, smooth wall, bulk properties",
            "±10 % (from memory)",
            List.of("gnielinski-1976"));

    private static final double LOWEST_REYNOLDS = 2300;

    /**
     * @param reynolds Reynolds number (-)
     * @return Darcy friction factor of a smooth tube (-)
     */
    public static double smoothFriction(double reynolds) {
        double root = 0.79 * Math.log(reynolds) - 1.64;
        return 1 / (root * root);
    }

    /**
     * @param reynolds Reynolds number on hydraulic diameter (-), at least 2300
     * @param prandtl Prandtl number (-)
     * @param friction Darcy friction factor (-)
     * @return Nusselt number (-)
     * @throws dev.penstock.errors.OutsideValidity for laminar flow
     */
    public static double nusselt(double reynolds, double prandtl, double friction) {
        Require.within("Gnielinski", "Reynolds number (-)", reynolds, LOWEST_REYNOLDS, Double.MAX_VALUE);
        double eighth = friction / 8;
        double pr23 = Math.cbrt(prandtl * prandtl);
        return eighth * (reynolds - 1000) * prandtl / (1 + 12.7 * Math.sqrt(eighth) * (pr23 - 1));
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public double nusselt(ChannelFlow flow) {
        return nusselt(flow.reynolds, flow.prandtl, smoothFriction(flow.reynolds));
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        return flow.reynolds >= 3000 && flow.reynolds <= 5e6 && flow.prandtl >= 0.5 && flow.prandtl <= 2000;
    }
}
