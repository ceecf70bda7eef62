package dev.penstock.cooling.jacket;

import dev.penstock.cooling.design.ExtensionKind;
import dev.penstock.errors.Require;

/**
 * A sheet behind the jacket in equilibrium.
 *
 * @param kind how it is kept from burning
 * @param material id of its material
 * @param startAreaRatio area ratio at which it starts (-)
 * @param startTemperature wall temperature there, the hottest place (K)
 * @param exitTemperature wall temperature at the nozzle exit (K)
 * @param heatRadiated heat given off to the outside (W)
 * @param area area of the wall (m²)
 */
public record ExtensionResult(
        ExtensionKind kind,
        String material,
        double startAreaRatio,
        double startTemperature,
        double exitTemperature,
        double heatRadiated,
        double area) {

    public ExtensionResult {
        Require.positive("nozzle extension", "start area ratio (-)", startAreaRatio);
        Require.positive("nozzle extension", "temperature (K)", startTemperature);
        Require.positive("nozzle extension", "temperature (K)", exitTemperature);
        Require.finite("nozzle extension", "heat radiated (W)", heatRadiated);
        Require.notNegative("nozzle extension", "area (m²)", area);
    }
}
