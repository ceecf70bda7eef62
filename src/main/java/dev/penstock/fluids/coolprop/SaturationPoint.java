package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropInputs.PRESSURE_QUALITY;

import java.util.function.Supplier;

/**
 * Both ends of the two-phase region at one pressure: any mixture of the two follows by the lever rule; what has no lever rule is
 * taken from the liquid, and is looked up when it is first asked for. Not thread-safe.
 */
final class SaturationPoint {

    private final double temperature;
    private final double liquidDensity;
    private final double vapourDensity;
    private final double liquidEnthalpy;
    private final double vapourEnthalpy;
    private final double liquidEntropy;
    private final double vapourEntropy;
    private Liquid liquid;

    /** What a mixture has from its liquid. */
    record Liquid(
            double isobaricHeatCapacity,
            double isochoricHeatCapacity,
            double soundSpeed,
            double viscosity,
            double conductivity) {}

    /**
     * Solves for saturation; moves the handle.
     *
     * @param handle state object
     * @param p pressure below the critical one (Pa)
     */
    SaturationPoint(CoolPropHandle handle, double p) {
        handle.update(PRESSURE_QUALITY, p, 1);
        vapourDensity = handle.output(CoolPropOutput.DENSITY);
        vapourEnthalpy = handle.output(CoolPropOutput.ENTHALPY);
        vapourEntropy = handle.output(CoolPropOutput.ENTROPY);
        handle.update(PRESSURE_QUALITY, p, 0);
        liquidDensity = handle.output(CoolPropOutput.DENSITY);
        liquidEnthalpy = handle.output(CoolPropOutput.ENTHALPY);
        liquidEntropy = handle.output(CoolPropOutput.ENTROPY);
        temperature = handle.output(CoolPropOutput.TEMPERATURE);
    }

    /**
     * @param saturated a cursor that stands at the saturated liquid of this pressure, asked where its properties are not known yet
     * @return the liquid's properties
     */
    Liquid liquid(Supplier<CoolPropCursor> saturated) {
        if (liquid == null) {
            CoolPropCursor at = saturated.get();
            liquid = new Liquid(
                    at.isobaricHeatCapacity(),
                    at.isochoricHeatCapacity(),
                    at.soundSpeed(),
                    at.viscosity(),
                    at.conductivity());
        }
        return liquid;
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
