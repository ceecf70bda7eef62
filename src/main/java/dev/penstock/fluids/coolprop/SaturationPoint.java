package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropInputs.PRESSURE_QUALITY;

import dev.penstock.fluids.property.TransportModel;
import java.util.Optional;

/**
 * Both ends of the two-phase region at one pressure: any mixture of the two follows by the lever rule; what has no lever rule is
 * taken from the liquid. Immutable.
 */
final class SaturationPoint {

    private final double temperature;
    private final double liquidDensity;
    private final double vapourDensity;
    private final double liquidEnthalpy;
    private final double vapourEnthalpy;
    private final double liquidEntropy;
    private final double vapourEntropy;
    private final double isobaricHeatCapacity;
    private final double isochoricHeatCapacity;
    private final double soundSpeed;
    private final double viscosity;
    private final double conductivity;

    /**
     * Solves for saturation; moves the handle.
     *
     * @param handle state object
     * @param p pressure below the critical one (Pa)
     * @param transport viscosity and conductivity, if CoolProp's own are not to be used
     */
    SaturationPoint(CoolPropHandle handle, double p, Optional<TransportModel> transport) {
        handle.update(PRESSURE_QUALITY, p, 1);
        vapourDensity = handle.output(CoolPropOutput.DENSITY);
        vapourEnthalpy = handle.output(CoolPropOutput.ENTHALPY);
        vapourEntropy = handle.output(CoolPropOutput.ENTROPY);
        handle.update(PRESSURE_QUALITY, p, 0);
        liquidDensity = handle.output(CoolPropOutput.DENSITY);
        liquidEnthalpy = handle.output(CoolPropOutput.ENTHALPY);
        liquidEntropy = handle.output(CoolPropOutput.ENTROPY);
        temperature = handle.output(CoolPropOutput.TEMPERATURE);
        isobaricHeatCapacity = handle.output(CoolPropOutput.ISOBARIC_HEAT_CAPACITY);
        isochoricHeatCapacity = handle.output(CoolPropOutput.ISOCHORIC_HEAT_CAPACITY);
        soundSpeed = handle.output(CoolPropOutput.SOUND_SPEED);
        viscosity = transport.isPresent()
                ? transport.get().viscosity(temperature, liquidDensity, p)
                : handle.output(CoolPropOutput.VISCOSITY);
        conductivity = transport.isPresent()
                ? transport.get().conductivity(temperature, liquidDensity, p)
                : handle.output(CoolPropOutput.CONDUCTIVITY);
    }

    /** Of the liquid (J/(kg·K)). */
    double isobaricHeatCapacity() {
        return isobaricHeatCapacity;
    }

    /** Of the liquid (J/(kg·K)). */
    double isochoricHeatCapacity() {
        return isochoricHeatCapacity;
    }

    /** Of the liquid (m/s). */
    double soundSpeed() {
        return soundSpeed;
    }

    /** Of the liquid (Pa·s). */
    double viscosity() {
        return viscosity;
    }

    /** Of the liquid (W/(m·K)). */
    double conductivity() {
        return conductivity;
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
