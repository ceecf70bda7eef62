package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Convection from combustion gas to the nozzle wall in closed form.
 * <pre>
 * h = [0.026/D_t^0.2 · (μ^0.2 cp/Pr^0.6)_0 · (p_c/c*)^0.8 · (D_t/R)^0.1] (A_t/A)^0.9 σ
 * σ = 1/{[½ (T_w/T_0)(1 + (γ−1)/2 M²) + ½]^0.68 [1 + (γ−1)/2 M²]^0.12}
 * </pre>
 * Properties at stagnation; R mean radius of curvature of the throat contour. Driving difference T_aw − T_w. Source:
 * [bartz-1957], equations also in [nasa-sp-125] (4-13, 4-14). Usually high in the barrel and at low Reynolds number.
 */
public final class Bartz {

    public static final ModelCard CARD = new ModelCard(
            "cooling.bartz",
            "Gas-side convection, Bartz",
            "h = [0.026/Dt^0.2 (mu^0.2 cp/Pr^0.6)_0 (pc/c*)^0.8 (Dt/R)^0.1] (At/A)^0.9 sigma",
            "turbulent boundary layer, nozzle of moderate expansion",
            "±20 to 30 % (from memory)",
            List.of("bartz-1957", "nasa-sp-125"));

    /** The coefficient falls with this power of the area ratio (-). */
    public static final double AREA_EXPONENT = 0.9;

    private Bartz() {}

    /**
     * The part of the coefficient that does not change along the nozzle.
     *
     * @param throatDiameter throat diameter (m)
     * @param curvatureRadius mean radius of curvature of the throat contour (m)
     * @param viscosity stagnation viscosity (Pa·s)
     * @param heatCapacity stagnation cp (J/(kg·K))
     * @param prandtl stagnation Prandtl number (-)
     * @param chamberPressure stagnation pressure (Pa)
     * @param characteristicVelocity characteristic velocity (m/s)
     * @return coefficient at the throat with σ = 1 (W/(m²·K))
     */
    public static double throatCoefficient(
            double throatDiameter,
            double curvatureRadius,
            double viscosity,
            double heatCapacity,
            double prandtl,
            double chamberPressure,
            double characteristicVelocity) {
        return 0.026
                / Math.pow(throatDiameter, 0.2)
                * Math.pow(viscosity, 0.2)
                * heatCapacity
                / Math.pow(prandtl, 0.6)
                * Math.pow(chamberPressure / characteristicVelocity, 0.8)
                * Math.pow(throatDiameter / curvatureRadius, 0.1);
    }

    /**
     * As {@link #throatCoefficient(double, double, double, double, double, double, double)}, for the gas of a nozzle.
     *
     * @param profile gas along the nozzle
     * @param properties composition of the gas while it crosses the boundary layer
     * @return coefficient at the throat with σ = 1 (W/(m²·K))
     */
    public static double throatCoefficient(HotGasProfile profile, GasSideDesign.Properties properties) {
        HotGas gas = profile.gas();
        return throatCoefficient(
                2 * profile.throatRadius(),
                profile.throatCurvatureRadius(),
                gas.viscosity(),
                gas.heatCapacity(properties),
                gas.prandtl(properties),
                gas.pressure(),
                gas.characteristicVelocity());
    }

    /**
     * @param wallTemperature gas-side surface temperature (K)
     * @param stagnationTemperature stagnation temperature (K)
     * @param gamma isentropic exponent (-)
     * @param mach Mach number (-)
     * @return correction σ for the change of properties across the boundary layer (-)
     */
    public static double sigma(double wallTemperature, double stagnationTemperature, double gamma, double mach) {
        double total = 1 + 0.5 * (gamma - 1) * mach * mach;
        return sigma(wallTemperature / stagnationTemperature, total);
    }

    /** As {@link #sigma(double, double, double, double)}, with T_w/T_0 and 1 + (γ−1)/2 M² at hand. */
    static double sigma(double temperatureRatio, double total) {
        return Math.pow(0.5 * temperatureRatio * total + 0.5, -0.68) * Math.pow(total, -0.12);
    }
}
