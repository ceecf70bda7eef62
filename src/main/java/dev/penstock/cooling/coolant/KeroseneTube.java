package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Kerosene in small heated copper tubes at rocket conditions.
 * <pre>Nu = 0.0068 Re_b^0.94 Pr_b^0.4</pre>
 * Source: [giovanetti-1983], constants from memory and attribution unsure. Holds about for 1e4 ≤ Re ≤ 2e5; above that the
 * exponent overrates the flow.
 */
public final class KeroseneTube implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.kerosene-tube",
            "Kerosene in heated copper tubes",
            "Nu = 0.0068 Re_b^0.94 Pr_b^0.4",
            "1e4 ≤ Re ≤ 2e5, kerosene at 13 to 34 MPa",
            "±30 % (from memory; attribution unsure)",
            List.of("giovanetti-1983"));

    /**
     * @param reynolds Reynolds number, bulk properties (-)
     * @param prandtl Prandtl number, bulk properties (-)
     * @return Nusselt number on bulk conductivity (-)
     */
    public static double nusselt(double reynolds, double prandtl) {
        return 0.0068 * Math.pow(reynolds, 0.94) * Math.pow(prandtl, 0.4);
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
        return flow.reynolds >= 1e4 && flow.reynolds <= 2e5;
    }
}
