package dev.penstock.cooling.protection;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * A wall that protects by charring and being carried away.
 * <pre>
 * recession    ṡ = q/(ρ H_eff)
 * char depth   √(2 k (T_aw − T_char) t/(ρ [c (T_char − T_0) + L]))       Stefan's problem, quasi-steady
 * needed       (ṡ t + char depth) · 1.25 + 1.5 √(α t)                   insulation that keeps the back cool
 * </pre>
 * H_eff is the effective heat of ablation, blowing included. Quasi-steady estimates in common use [nasa-sp-8087],
 * [incropera-2007]; the margin of a quarter is common practice, no source.
 *
 * @param name what it is
 * @param density density (kg/m³)
 * @param effectiveHeat effective heat of ablation (J/kg)
 * @param charTemperature temperature at which it chars (K)
 * @param decompositionHeat heat of decomposition (J/kg)
 * @param conductivity conductivity of the char (W/(m·K))
 * @param heatCapacity specific heat (J/(kg·K))
 */
public record Ablator(
        String name,
        double density,
        double effectiveHeat,
        double charTemperature,
        double decompositionHeat,
        double conductivity,
        double heatCapacity) {

    public static final ModelCard CARD = new ModelCard(
            "cooling.ablator",
            "Charring ablator, quasi-steady",
            "s = q/(rho H_eff); char depth sqrt(2 k (T_aw - T_char) t/(rho [c (T_char - T_0) + L]))",
            "seconds to minutes; no erosion by particles",
            "±40 % (own judgement)",
            List.of("nasa-sp-8087", "incropera-2007"));

    private static final double MARGIN = 1.25;
    private static final double INSULATION = 1.5;

    /** Silica cloth in phenolic resin; figures from memory. */
    public static final Ablator SILICA_PHENOLIC = new Ablator("silica-phenolic", 1730, 12e6, 900, 0.8e6, 0.6, 1250);

    /** Carbon cloth in phenolic resin; figures from memory. */
    public static final Ablator CARBON_PHENOLIC = new Ablator("carbon-phenolic", 1450, 28e6, 900, 1.0e6, 1.0, 1400);

    /** Cork in phenolic binder; figures from memory. */
    public static final Ablator CORK = new Ablator("cork", 480, 9e6, 650, 0.7e6, 0.1, 1900);

    public Ablator {
        Require.positive(name, "density (kg/m³)", density);
        Require.positive(name, "effective heat of ablation (J/kg)", effectiveHeat);
        Require.positive(name, "char temperature (K)", charTemperature);
        Require.notNegative(name, "heat of decomposition (J/kg)", decompositionHeat);
        Require.positive(name, "conductivity (W/(m·K))", conductivity);
        Require.positive(name, "specific heat (J/(kg·K))", heatCapacity);
    }

    /**
     * @param flux heat flux to the wall (W/m²)
     * @return recession speed (m/s)
     */
    public double recession(double flux) {
        return Require.notNegative(name, "heat flux (W/m²)", flux) / (density * effectiveHeat);
    }

    /**
     * @param surfaceTemperature temperature of the surface (K)
     * @param initial temperature of the virgin material (K)
     * @param time time (s)
     * @return depth of the char front (m); zero below the char temperature
     */
    public double charDepth(double surfaceTemperature, double initial, double time) {
        double driving = Math.max(0, surfaceTemperature - charTemperature);
        double needed = density * (heatCapacity * (charTemperature - initial) + decompositionHeat);
        return Math.sqrt(2 * conductivity * driving * Require.notNegative(name, "time (s)", time) / needed);
    }

    /**
     * @param flux heat flux to the wall (W/m²)
     * @param surfaceTemperature temperature of the surface (K)
     * @param initial temperature of the virgin material (K)
     * @param time time (s)
     * @return depth that recedes or chars, with a margin of a quarter (m)
     */
    public double spent(double flux, double surfaceTemperature, double initial, double time) {
        return MARGIN * (recession(flux) * time + charDepth(surfaceTemperature, initial, time));
    }

    /**
     * @param flux heat flux to the wall (W/m²)
     * @param surfaceTemperature temperature of the surface (K)
     * @param initial temperature of the virgin material (K)
     * @param time time (s)
     * @return thickness to be laid on (m): what is spent, and insulation under it
     */
    public double thickness(double flux, double surfaceTemperature, double initial, double time) {
        double diffusivity = conductivity / (density * heatCapacity);
        return spent(flux, surfaceTemperature, initial, time) + INSULATION * Math.sqrt(diffusivity * time);
    }
}
