package dev.penstock.fluids.correlation;

import dev.penstock.fluids.property.Polynomial;
import dev.penstock.fluids.property.TemperatureFunction;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Thermodynamics of a compressed liquid from one generating function, so that density, heat capacity, enthalpy, entropy
 * and sound speed belong together exactly. Known at a reference pressure p0: density ρ0(T), isothermal bulk modulus
 * K0(T), heat capacity cp0(T). The volume under pressure is Tait's:
 *
 * <pre>
 * v(T, p)   = v0 [1 - C ln((B + p)/(B + p0))],   v0 = 1/ρ0,   B = C K0 - p0
 * g(T, p)   = g0(T) + Γ(T, p),   Γ = ∫ v dp = v0 [(1 + C)(p - p0) - C (B + p) ln((B + p)/(B + p0))]
 * s = -∂g/∂T = s0 - ∂Γ/∂T,   h = g + T s = h0 + Γ - T ∂Γ/∂T,   cp = cp0 - T ∂²Γ/∂T²
 * cv = cp + T (∂v/∂T)² / (∂v/∂p),   a² = -v² (cp/cv) / (∂v/∂p)
 * </pre>
 *
 * <p>Source: [tait-1888] in the form of [dymond-malhotra-1988]. Holds for the liquid from p0 to a few hundred MPa, away
 * from the critical point. Enthalpy and entropy are zero at 298.15 K and p0.
 */
final class TaitLiquid {

    static final ModelCard CARD = new ModelCard(
            "fluids.tait-liquid",
            "Compressed liquid by Tait's equation with exact integrals",
            "v = v0(T) [1 - C ln((B(T) + p)/(B(T) + p0))], h, s, cp, cv and sound speed from the same Gibbs energy",
            "liquid, reduced temperature up to about 0.9, each property in the range its data file states",
            "stated per property in the fluid's data file",
            List.of("tait-1888", "dymond-malhotra-1988"));

    private static final double ZERO_TEMPERATURE = 298.15;

    private final TemperatureFunction density;
    private final TemperatureFunction bulkModulus;
    private final Polynomial heatCapacity;
    private final double c;
    private final double p0;

    /**
     * @param density density at the reference pressure (kg/m³)
     * @param bulkModulus isothermal bulk modulus at the reference pressure (Pa)
     * @param heatCapacity specific heat at constant (reference) pressure (J/(kg·K))
     * @param constant Tait's C (-)
     * @param referencePressure p0 (Pa)
     */
    TaitLiquid(
            TemperatureFunction density,
            TemperatureFunction bulkModulus,
            Polynomial heatCapacity,
            double constant,
            double referencePressure) {
        this.density = density;
        this.bulkModulus = bulkModulus;
        this.heatCapacity = heatCapacity;
        this.c = constant;
        this.p0 = referencePressure;
    }

    private double b(double t) {
        return c * bulkModulus.value(t) - p0;
    }

    /** ln((B + p)/(B + p0)). */
    private double log(double b, double p) {
        return Math.log1p((p - p0) / (b + p0));
    }

    /** Γ/v0, its first and second derivative by B. */
    private double f(double b, double p) {
        return (1 + c) * (p - p0) - c * (b + p) * log(b, p);
    }

    private double fb(double b, double p) {
        return -c * (log(b, p) - (p - p0) / (b + p0));
    }

    private double fbb(double b, double p) {
        double dp = p - p0;
        return -c * dp * dp / ((b + p) * (b + p0) * (b + p0));
    }

    /** @return specific volume (m³/kg) at a pressure (Pa) and temperature (K) */
    double volume(double p, double t) {
        return (1 - c * log(b(t), p)) / density.value(t);
    }

    /** @return density over that at the reference pressure (-) */
    double compression(double p, double t) {
        return 1 / (1 - c * log(b(t), p));
    }

    /** ∂v/∂p at constant temperature (m³/(kg·Pa)), negative. */
    private double volumeByPressure(double p, double t) {
        return -c / (density.value(t) * (b(t) + p));
    }

    /** ∂v/∂T at constant pressure (m³/(kg·K)). */
    private double volumeByTemperature(double p, double t) {
        double b = b(t);
        double rho = density.value(t);
        double byB = 1 / (b + p) - 1 / (b + p0);
        return -density.slope(t) / (rho * rho) * (1 - c * log(b, p)) - c / rho * byB * c * bulkModulus.slope(t);
    }

    private double gammaByTemperature(double p, double t) {
        double b = b(t);
        double rho = density.value(t);
        return -density.slope(t) / (rho * rho) * f(b, p) + fb(b, p) * c * bulkModulus.slope(t) / rho;
    }

    private double gammaByTemperatureTwice(double p, double t) {
        double b = b(t);
        double rho = density.value(t);
        double slope = density.slope(t);
        double v1 = -slope / (rho * rho);
        double v2 = -density.curvature(t) / (rho * rho) + 2 * slope * slope / (rho * rho * rho);
        double b1 = c * bulkModulus.slope(t);
        double b2 = c * bulkModulus.curvature(t);
        return v2 * f(b, p) + 2 * v1 * fb(b, p) * b1 + (fbb(b, p) * b1 * b1 + fb(b, p) * b2) / rho;
    }

    /** @return specific enthalpy (J/kg) */
    double enthalpy(double p, double t) {
        double gamma = f(b(t), p) / density.value(t);
        return heatCapacity.integral(ZERO_TEMPERATURE, t) + gamma - t * gammaByTemperature(p, t);
    }

    /** @return specific entropy (J/(kg·K)) */
    double entropy(double p, double t) {
        return heatCapacity.integralOverTemperature(ZERO_TEMPERATURE, t) - gammaByTemperature(p, t);
    }

    /** @return specific heat at constant pressure (J/(kg·K)) */
    double isobaricHeatCapacity(double p, double t) {
        return heatCapacity.value(t) - t * gammaByTemperatureTwice(p, t);
    }

    /** @return specific heat at constant volume (J/(kg·K)) */
    double isochoricHeatCapacity(double p, double t) {
        double expansion = volumeByTemperature(p, t);
        return isobaricHeatCapacity(p, t) + t * expansion * expansion / volumeByPressure(p, t);
    }

    /** @return speed of sound (m/s) */
    double soundSpeed(double p, double t) {
        double ratio = isobaricHeatCapacity(p, t) / isochoricHeatCapacity(p, t);
        return volume(p, t) * Math.sqrt(-ratio / volumeByPressure(p, t));
    }
}
