package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Turbulent heating of a gas at a large wall-to-bulk temperature ratio, from heated-tube tests with hydrogen and helium.
 * <pre>Nu = 0.025 Re_b^0.8 Pr_b^0.4 (T_w/T_b)^−0.55</pre>
 * Source: [mccarthy-wolf-1960]. Holds for 1 ≤ T_w/T_b ≤ 10, turbulent, gas well above its critical temperature.
 */
public final class McCarthyWolf implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.mccarthy-wolf",
            "Gas at a large temperature ratio, McCarthy and Wolf",
            "Nu = 0.025 Re_b^0.8 Pr_b^0.4 (T_w/T_b)^-0.55",
            "Re ≥ 1e4, T_w/T_b up to 10",
            "±20 % (from memory)",
            List.of("mccarthy-wolf-1960"));

    /**
     * @param reynolds Reynolds number on hydraulic diameter, bulk properties (-)
     * @param prandtl Prandtl number, bulk properties (-)
     * @param temperatureRatio wall over bulk temperature (-)
     * @return Nusselt number (-)
     */
    public static double nusselt(double reynolds, double prandtl, double temperatureRatio) {
        return 0.025 * Math.pow(reynolds, 0.8) * Math.pow(prandtl, 0.4) * Math.pow(temperatureRatio, -0.55);
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public double nusselt(ChannelFlow flow) {
        return nusselt(flow.reynolds, flow.prandtl, flow.wallTemperature / flow.bulkTemperature);
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        double ratio = flow.wallTemperature / flow.bulkTemperature;
        return flow.reynolds >= 1e4 && ratio >= 0.9 && ratio <= 10;
    }
}
