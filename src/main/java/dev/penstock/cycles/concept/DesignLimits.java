package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;

/**
 * Hardware limits of a concept that belong to no single machine; pumps, turbines and the jacket carry their own.
 *
 * @param dischargePressure highest pump discharge pressure (Pa)
 * @param dischargeSource where that comes from
 * @param tankPressure highest tank pressure (Pa), for pressure-fed cycles
 * @param tankSource where that comes from
 * @param exhaustLoss largest share of the specific impulse that dumped turbine gas may cost (-)
 * @param exhaustSource where that comes from
 */
public record DesignLimits(
        double dischargePressure,
        String dischargeSource,
        double tankPressure,
        String tankSource,
        double exhaustLoss,
        String exhaustSource) {

    public DesignLimits {
        Require.positive("limits", "discharge pressure (Pa)", dischargePressure);
        Require.positive("limits", "tank pressure (Pa)", tankPressure);
        Require.positive("limits", "exhaust loss (-)", exhaustLoss);
    }
}
