package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Nucleate boiling of a coolant below its critical pressure, and the flux at which it ends, from reduced pressure alone.
 * <pre>
 * nucleate   q_nb = [0.00417 P_c^0.69 F ΔT]^(10/3),   F = 1.8 p_r^0.17 + 4 p_r^1.2 + 10 p_r^10,  P_c in kPa, ΔT over boiling
 * together   q = √(q_fc² + q_nb²)                        with forced convection q_fc
 * pool limit q_p = 367 P_c p_r^0.35 (1 − p_r)^0.9
 * subcooled  q_p [1 + 0.1 (ρ_l/ρ_v)^0.75 cp ΔT_sub/h_fg]
 * flowing    q_CHF = subcooled pool limit + h_fc (T_sat + ΔT_p − T_b)
 * </pre>
 * ΔT_p is the superheat at the pool limit; ρ_v as an ideal gas; h_fg by Clausius and Clapeyron. Sources: [mostinski-1963]
 * for both boiling fits, [kutateladze-1961] for the sum of squares, [ivey-morris-1962] for subcooling, [gambill-1963] for
 * adding the convective part; all constants from memory. The fluid-fitted lines q = a + b V ΔT_sub in use for storables have
 * no constants here that could be checked.
 */
public final class Boiling {

    public static final ModelCard CARD = new ModelCard(
            "cooling.boiling",
            "Nucleate boiling and critical heat flux",
            "q = sqrt(q_fc^2 + q_nb^2); q_CHF = q_pool (1 + 0.1 (rho_l/rho_v)^0.75 cp dT_sub/h_fg) + h_fc (T_sat + dT - T_b)",
            "reduced pressure 0.01 to 0.9, clean wetted wall",
            "±30 % nucleate, ±40 % critical flux (own judgement)",
            List.of("mostinski-1963", "kutateladze-1961", "ivey-morris-1962", "gambill-1963"));

    private static final double PRESSURE_STEP = 1e-3;

    private Boiling() {}

    private static double pressureFunction(double reduced) {
        return 1.8 * Math.pow(reduced, 0.17) + 4 * Math.pow(reduced, 1.2) + 10 * Math.pow(reduced, 10);
    }

    /**
     * @param criticalPressure critical pressure (Pa)
     * @param pressure pressure (Pa), below it
     * @param superheat wall temperature over boiling temperature (K)
     * @return nucleate boiling flux (W/m²); zero without superheat
     */
    public static double nucleateFlux(double criticalPressure, double pressure, double superheat) {
        if (superheat <= 0) {
            return 0;
        }
        double base = 0.00417
                * Math.pow(criticalPressure / 1e3, 0.69)
                * pressureFunction(pressure / criticalPressure)
                * superheat;
        return Math.pow(base, 10.0 / 3.0);
    }

    /**
     * @param criticalPressure critical pressure (Pa)
     * @param pressure pressure (Pa), below it
     * @return critical flux of a saturated pool (W/m²)
     */
    public static double poolLimit(double criticalPressure, double pressure) {
        double reduced = pressure / criticalPressure;
        return 367 * criticalPressure / 1e3 * Math.pow(reduced, 0.35) * Math.pow(1 - reduced, 0.9);
    }

    /**
     * @param criticalPressure critical pressure (Pa)
     * @param pressure pressure (Pa), below it
     * @param flux nucleate boiling flux (W/m²)
     * @return superheat that drives it (K)
     */
    public static double superheat(double criticalPressure, double pressure, double flux) {
        return Math.pow(flux, 0.3)
                / (0.00417 * Math.pow(criticalPressure / 1e3, 0.69) * pressureFunction(pressure / criticalPressure));
    }

    /**
     * Critical flux of a subcooled flow.
     *
     * @param criticalPressure critical pressure (Pa)
     * @param pressure pressure (Pa), below it
     * @param subcooling boiling temperature less bulk temperature (K), zero or more
     * @param densityRatio liquid over vapour density (-)
     * @param sensibleOverLatent cp ΔT_sub/h_fg (-)
     * @param convective coefficient of forced convection, fin effect left out (W/(m²·K))
     * @return critical flux on the wetted surface (W/m²)
     */
    public static double criticalFlux(
            double criticalPressure,
            double pressure,
            double subcooling,
            double densityRatio,
            double sensibleOverLatent,
            double convective) {
        double pool = poolLimit(criticalPressure, pressure);
        double subcooled = pool * (1 + 0.1 * Math.pow(densityRatio, 0.75) * sensibleOverLatent);
        return subcooled + convective * (subcooling + superheat(criticalPressure, pressure, pool));
    }

    /** Heat of evaporation by Clausius and Clapeyron with the vapour as an ideal gas (J/kg). */
    public static double latentHeat(SaturationLine line, double molarMass, double pressure) {
        double boiling = line.temperature(pressure);
        double above = line.temperature(pressure * (1 + PRESSURE_STEP));
        double below = line.temperature(pressure * (1 - PRESSURE_STEP));
        double slope = 2 * PRESSURE_STEP * pressure / (above - below);
        double vapour = vapourDensity(molarMass, pressure, boiling);
        return boiling * slope * (1 / vapour - 1 / line.liquidDensity(pressure));
    }

    /**
     * @param molarMass molar mass (kg/mol)
     * @param pressure pressure (Pa)
     * @param temperature temperature (K)
     * @return density of an ideal gas (kg/m³)
     */
    public static double vapourDensity(double molarMass, double pressure, double temperature) {
        return pressure * molarMass / (Constants.MOLAR_GAS_CONSTANT * temperature);
    }
}
