package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Temperature that an uncooled wall would take.
 * <pre>T_aw = T_0 [1 + r (γ−1)/2 M²]/[1 + (γ−1)/2 M²],   r = Pr^(1/3), turbulent</pre>
 * Source: [bartz-1957], [nasa-sp-125].
 */
public final class RecoveryTemperature {

    public static final ModelCard CARD = new ModelCard(
            "cooling.recovery",
            "Adiabatic wall temperature",
            "T_aw = T_0 [1 + r (gamma-1)/2 M^2]/[1 + (gamma-1)/2 M^2], r = Pr^(1/3)",
            "turbulent boundary layer",
            "about 2 % (from memory)",
            List.of("bartz-1957", "nasa-sp-125"));

    private RecoveryTemperature() {}

    /**
     * @param stagnationTemperature stagnation temperature (K)
     * @param gamma isentropic exponent (-)
     * @param mach Mach number (-)
     * @param prandtl Prandtl number (-)
     * @return adiabatic wall temperature (K)
     */
    public static double of(double stagnationTemperature, double gamma, double mach, double prandtl) {
        double kinetic = 0.5 * (gamma - 1) * mach * mach;
        return stagnationTemperature * (1 + Math.cbrt(prandtl) * kinetic) / (1 + kinetic);
    }
}
