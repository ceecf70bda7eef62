package dev.penstock.cooling.coolant;

/**
 * What a coolant-side correlation may look at: bulk, wall and place. Overwritten from cell to cell; not thread-safe.
 */
public final class ChannelFlow {

    public double reynolds;
    public double prandtl;
    public double pressure;
    public double bulkTemperature;
    public double bulkDensity;
    public double bulkViscosity;
    public double bulkConductivity;
    public double bulkHeatCapacity;
    public double bulkEnthalpy;

    /** Vapour mass fraction between 0 and 1 in a two-phase flow; −1 in a single phase. */
    public double quality;

    /** Infinite in a two-phase flow and beyond the fluid's model, where it is not looked at. */
    public double bulkSoundSpeed;

    public double wallTemperature;
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

    /** Averaged over temperature from bulk to wall. */
    double meanDensity;

    double meanViscosity;
    double meanPrandtl;
    double meanConductivity;

    public double velocity;
    public double hydraulicDiameter;
    public double distanceOverDiameter;
    public double frictionFactor;
    public double criticalPressure;

    /** Infinite where the coolant does not boil (K). */
    public double boilingTemperature;

    /** How much of boiling is left below the critical pressure (-). */
    public double boilingShare;

    public double pseudoCriticalTemperature;

    /** Mean cp between wall and bulk (J/(kg·K)); bulk cp where the two are the same. */
    double meanHeatCapacity() {
        double difference = wallStateTemperature - bulkTemperature;
        if (Math.abs(difference) < 1e-3 * bulkTemperature) {
            return bulkHeatCapacity;
        }
        return Math.max(1.0, (wallEnthalpy - bulkEnthalpy) / difference);
    }
}
