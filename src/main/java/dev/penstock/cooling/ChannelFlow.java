package dev.penstock.cooling;

/**
 * What a coolant-side correlation may look at: bulk, wall and place. Overwritten from cell to cell; not thread-safe.
 */
final class ChannelFlow {

    double reynolds;
    double prandtl;
    double pressure;
    double bulkTemperature;
    double bulkDensity;
    double bulkViscosity;
    double bulkConductivity;
    double bulkHeatCapacity;
    double bulkEnthalpy;

    /** Vapour mass fraction between 0 and 1 in a two-phase flow; −1 in a single phase. */
    double quality;

    /** Infinite in a two-phase flow and beyond the fluid's model, where it is not looked at. */
    double bulkSoundSpeed;

    double wallTemperature;
    /** Where the wall properties were read: the wall temperature, held inside the fluid's model (K). */
    double wallStateTemperature;

    double wallDensity;
    double wallViscosity;
    double wallConductivity;
    double wallEnthalpy;

    double filmDensity;
    double filmViscosity;
    double filmPrandtl;
    double filmConductivity;

    double velocity;
    double hydraulicDiameter;
    double distanceOverDiameter;
    double frictionFactor;
    double criticalPressure;

    /** Infinite where the coolant does not boil (K). */
    double boilingTemperature;

    /** How much of boiling is left below the critical pressure (-). */
    double boilingShare;

    double pseudoCriticalTemperature;

    /** Mean cp between wall and bulk (J/(kg·K)); bulk cp where the two are the same. */
    double meanHeatCapacity() {
        double difference = wallStateTemperature - bulkTemperature;
        if (Math.abs(difference) < 1e-3 * bulkTemperature) {
            return bulkHeatCapacity;
        }
        return Math.max(1.0, (wallEnthalpy - bulkEnthalpy) / difference);
    }
}
