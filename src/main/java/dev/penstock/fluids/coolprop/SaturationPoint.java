package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropInputs.PRESSURE_QUALITY;
import static dev.penstock.fluids.coolprop.CoolPropInputs.QUALITY_TEMPERATURE;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.property.TransportModel;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Both ends of the two-phase region at one pressure: any mixture of the two follows by the lever rule; what has no lever rule is
 * taken from the liquid. Immutable.
 */
final class SaturationPoint {

    /** Two pressures by which the slope of the boiling line is told (-). */
    private static final double APART = -1e-3;

    /** How near to the pressure a temperature must boil (-). */
    private static final double CLOSE = 1e-10;

    private static final int MOST_STEPS = 5;

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
     * @param boiling boiling temperature (K) at a pressure (Pa), nearly; not a number where it is not known
     * @param transport viscosity and conductivity, if CoolProp's own are not to be used
     */
    SaturationPoint(CoolPropHandle handle, double p, DoubleUnaryOperator boiling, Optional<TransportModel> transport) {
        double found = moveToVapour(handle, p, boiling);
        vapourDensity = handle.output(CoolPropOutput.DENSITY);
        vapourEnthalpy = handle.output(CoolPropOutput.ENTHALPY);
        vapourEntropy = handle.output(CoolPropOutput.ENTROPY);
        if (Double.isNaN(found)) {
            handle.update(PRESSURE_QUALITY, p, 0);
        } else {
            handle.update(QUALITY_TEMPERATURE, 0, found);
        }
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

    /**
     * Moves the handle to boiling vapour at a pressure. CoolProp solves for both phases at a temperature in a tenth of the time that it
     * takes at a pressure, so the temperature is sought: steps of Newton's method in ln p over 1/T, which is nearly straight.
     *
     * @return boiling temperature (K); not a number if CoolProp's own search was left to find it
     */
    private static double moveToVapour(CoolPropHandle handle, double p, DoubleUnaryOperator boiling) {
        double t = boiling.applyAsDouble(p);
        double slope = Math.log1p(APART) / (1 / boiling.applyAsDouble(p * (1 + APART)) - 1 / t);
        try {
            for (int i = 0; i < MOST_STEPS && slope < 0; i++) {
                handle.update(QUALITY_TEMPERATURE, 1, t);
                double off = Math.log(p / handle.output(CoolPropOutput.PRESSURE));
                if (Math.abs(off) < CLOSE) {
                    return t;
                }
                t = 1 / (1 / t + off / slope);
            }
        } catch (PropertyFailure e) {
            // beside the ends of the boiling line: CoolProp's own search may still find it
        }
        handle.update(PRESSURE_QUALITY, p, 1);
        return Double.NaN;
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
