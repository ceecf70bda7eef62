package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Turbulent heating of hydrogen and helium over the whole length of a tube, entrance included.
 * <pre>Nu = 0.023 Re_b^0.8 Pr_b^0.4 (T_w/T_b)^−(0.57 − 1.59 D/x)</pre>
 * Source: [taylor-1968]. Holds for x/D ≥ 2 and T_w/T_b up to about 20. Closer to the inlet than 2 D the value at 2 D is
 * taken.
 */
public final class Taylor implements CoolantSideHeatTransfer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.taylor",
            "Hydrogen in a tube, Taylor",
            "Nu = 0.023 Re_b^0.8 Pr_b^0.4 (T_w/T_b)^-(0.57 - 1.59 D/x)",
            "x/D ≥ 2, T_w/T_b up to 20, Re ≥ 1e4",
            "±25 % (from memory)",
            List.of("taylor-1968"));

    private static final double SHORTEST = 2;

    /**
     * @param reynolds Reynolds number on hydraulic diameter, bulk properties (-)
     * @param prandtl Prandtl number, bulk properties (-)
     * @param temperatureRatio wall over bulk temperature (-)
     * @param distance distance from the inlet over hydraulic diameter (-)
     * @return Nusselt number (-)
     */
    public static double nusselt(double reynolds, double prandtl, double temperatureRatio, double distance) {
        double exponent = 0.57 - 1.59 / Math.max(SHORTEST, distance);
        return 0.023 * Math.pow(reynolds, 0.8) * Math.pow(prandtl, 0.4) * Math.pow(temperatureRatio, -exponent);
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public double nusselt(ChannelFlow flow) {
        double ratio = flow.wallTemperature / flow.bulkTemperature;
        return nusselt(flow.reynolds, flow.prandtl, ratio, flow.distanceOverDiameter);
    }

    @Override
    public boolean covers(ChannelFlow flow) {
        double ratio = flow.wallTemperature / flow.bulkTemperature;
        return flow.reynolds >= 1e4 && ratio >= 0.9 && ratio <= 23;
    }
}
