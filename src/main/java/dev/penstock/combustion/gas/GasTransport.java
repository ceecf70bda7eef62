package dev.penstock.combustion.gas;

import dev.penstock.errors.Require;

/**
 * Transport properties of a gas mixture.
 *
 * @param viscosity dynamic viscosity (Pa·s)
 * @param frozenConductivity thermal conductivity without reaction (W/(m·K))
 * @param equilibriumConductivity thermal conductivity with equilibrium reaction (W/(m·K))
 * @param frozenPrandtl Prandtl number with frozen cp and conductivity (-)
 * @param equilibriumPrandtl Prandtl number with equilibrium cp and conductivity (-)
 */
public record GasTransport(
        double viscosity,
        double frozenConductivity,
        double equilibriumConductivity,
        double frozenPrandtl,
        double equilibriumPrandtl) {

    public GasTransport {
        Require.positive("gas transport", "viscosity (Pa·s)", viscosity);
        Require.positive("gas transport", "conductivity (W/(m·K))", frozenConductivity);
        Require.positive("gas transport", "conductivity (W/(m·K))", equilibriumConductivity);
    }
}
