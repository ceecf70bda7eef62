package dev.penstock.turbomachinery.start;

import dev.penstock.errors.Require;

/**
 * Gas and bottle for a number of starts.
 *
 * @param gas fluid id
 * @param energy energy to the turbine shaft per start (J)
 * @param starts number of starts
 * @param gasPerStart gas used by the last, most expensive start (kg)
 * @param gasUsed gas used by all starts (kg)
 * @param gasLoaded gas in the full bottle (kg)
 * @param bottleVolume bottle volume (m³)
 * @param bottleMass empty bottle (kg)
 * @param finalPressure pressure in the bottle at the end of the last start (Pa)
 * @param finalTemperature temperature in the bottle at the end of the last start (K)
 */
public record StartGas(
        String gas,
        double energy,
        int starts,
        double gasPerStart,
        double gasUsed,
        double gasLoaded,
        double bottleVolume,
        double bottleMass,
        double finalPressure,
        double finalTemperature) {

    public StartGas {
        Require.positive("start gas", "energy (J)", energy);
        Require.positive("start gas", "gas per start (kg)", gasPerStart);
        Require.positive("start gas", "gas loaded (kg)", gasLoaded);
        Require.positive("start gas", "bottle volume (m³)", bottleVolume);
        Require.positive("start gas", "final pressure (Pa)", finalPressure);
    }
}
