package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropInputs.PRESSURE_QUALITY;

/**
 * Both ends of the two-phase region at one pressure, kept while a cursor stays there: any mixture of the two then
 * follows by the lever rule. Not thread-safe.
 */
final class SaturationPoint {

    private double pressure = Double.NaN;
    private double temperature;
    private double liquidDensity;
    private double vapourDensity;
    private double liquidEnthalpy;
    private double vapourEnthalpy;
    private double liquidEntropy;
    private double vapourEntropy;

    /**
     * Solves for saturation unless it is known for this pressure; moves the handle.
     *
     * @param handle state object
     * @param p pressure below the critical one (Pa)
     */
    void at(CoolPropHandle handle, double p) {
        if (p == pressure) {
            return;
        }
        pressure = Double.NaN;
        handle.update(PRESSURE_QUALITY, p, 1);
        vapourDensity = handle.output(CoolPropOutput.DENSITY);
        vapourEnthalpy = handle.output(CoolPropOutput.ENTHALPY);
        vapourEntropy = handle.output(CoolPropOutput.ENTROPY);
        handle.update(PRESSURE_QUALITY, p, 0);
        liquidDensity = handle.output(CoolPropOutput.DENSITY);
        liquidEnthalpy = handle.output(CoolPropOutput.ENTHALPY);
        liquidEntropy = handle.output(CoolPropOutput.ENTROPY);
        temperature = handle.output(CoolPropOutput.TEMPERATURE);
        pressure = p;
    }

    /** @return whether saturation is known for this pressure */
    boolean isAt(double p) {
        return p == pressure;
    }

    /**
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param value its value
     * @return vapour fraction by mass (-); outside 0 to 1 for a single phase
     */
    double quality(CoolPropOutput second, double value) {
        return second == CoolPropOutput.ENTHALPY
                ? (value - liquidEnthalpy) / (vapourEnthalpy - liquidEnthalpy)
                : (value - liquidEntropy) / (vapourEntropy - liquidEntropy);
    }

    double temperature() {
        return temperature;
    }

    double density(double quality) {
        return 1 / (quality / vapourDensity + (1 - quality) / liquidDensity);
    }

    double enthalpy(double quality) {
        return liquidEnthalpy + quality * (vapourEnthalpy - liquidEnthalpy);
    }

    double entropy(double quality) {
        return liquidEntropy + quality * (vapourEntropy - liquidEntropy);
    }
}
