package dev.penstock.fluids.coolprop;

/**
 * One step of Newton's method in density and temperature, the equation of state's own variables, towards a pressure and an
 * enthalpy or entropy.
 *
 * <pre>
 * [∂p/∂ρ  ∂p/∂T] [Δρ]   [p* - p]
 * [∂h/∂ρ  ∂h/∂T] [ΔT] = [h* - h],  ∂h/∂T = cv + pT/ρ, ∂h/∂ρ = pρ/ρ - T pT/ρ²;  ∂s/∂T = cv/T, ∂s/∂ρ = -pT/ρ²
 * </pre>
 *
 * <p>A scratch object: not thread-safe.
 */
final class FlashStep {

    private double density;
    private double temperature;
    private double size;

    /**
     * @param rho density of the present state (kg/m³)
     * @param t its temperature (K)
     * @param pressureByDensity its slope of pressure by density at constant temperature (Pa·m³/kg)
     * @param pressureByTemperature its slope of pressure by temperature at constant density (Pa/K)
     * @param cv its heat capacity at constant volume (J/(kg·K))
     * @param missingPressure wanted less present pressure (Pa)
     * @param enthalpy whether the second quantity is enthalpy; otherwise entropy
     * @param missing wanted less present second quantity (J/kg or J/(kg·K))
     */
    void solve(
            double rho,
            double t,
            double pressureByDensity,
            double pressureByTemperature,
            double cv,
            double missingPressure,
            boolean enthalpy,
            double missing) {
        double byTemperature = enthalpy ? cv + pressureByTemperature / rho : cv / t;
        double byDensity = enthalpy
                ? pressureByDensity / rho - t * pressureByTemperature / (rho * rho)
                : -pressureByTemperature / (rho * rho);
        double determinant = pressureByDensity * byTemperature - pressureByTemperature * byDensity;
        density = (missingPressure * byTemperature - pressureByTemperature * missing) / determinant;
        temperature = (pressureByDensity * missing - byDensity * missingPressure) / determinant;
        size = Math.max(Math.abs(density) / rho, Math.abs(temperature) / t);
    }

    /** @return change of density (kg/m³) */
    double density() {
        return density;
    }

    /** @return change of temperature (K) */
    double temperature() {
        return temperature;
    }

    /** @return the larger of the two changes, as a share of density or temperature (-) */
    double size() {
        return size;
    }
}
