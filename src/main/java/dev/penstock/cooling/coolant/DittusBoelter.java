package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Turbulent heating in a smooth tube with small temperature differences, in the form of McAdams.
 * <pre>Nu = 0.023 Re^0.8 Pr^0.4</pre>
 * Source: [dittus-boelter-1930], constant as [mcadams-1942] gives it for heating. Holds for Re ≥ 1e4, 0.7 ≤ Pr ≤ 160,
 * L/D ≥ 10, properties at the bulk temperature.
 */
public final class DittusBoelter implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.dittus-boelter",
            "Turbulent heating in a tube, Dittus and Boelter",
            "Nu = 0.023 Re^0.8 Pr^0.4",
            "Re ≥ 1e4, 0.7 ≤ Pr ≤ 160, small wall-to-bulk difference, smooth wall",
            "±25 % (from memory)",
            List.of("dittus-boelter-1930", "mcadams-1942"));

    /**
     * @param reynolds Reynolds number on hydraulic diameter (-)
     * @param prandtl Prandtl number (-)
     * @return Nusselt number (-)
     */
    public static double nusselt(double reynolds, double prandtl) {
        return 0.023 * Math.pow(reynolds, 0.8) * Math.pow(prandtl, 0.4);
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public double nusselt(ChannelFlow flow) {
        return nusselt(flow.reynolds, flow.prandtl);
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        return flow.reynolds >= 1e4 && flow.prandtl >= 0.7 && flow.prandtl <= 160;
    }
}
