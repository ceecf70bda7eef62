package dev.penstock.combustion.gas;

import dev.penstock.errors.Require;

/**
 * Transport properties of a gas mixture as far as a boundary layer asks of them: what reactions carry is left out, which costs more
 * than all the rest.
 *
 * @param viscosity dynamic viscosity (Pa·s)
 * @param prandtl Prandtl number with frozen cp and conductivity (-)
 */
public record FrozenTransport(double viscosity, double prandtl) {

    public FrozenTransport {
        Require.positive("gas transport", "viscosity (Pa·s)", viscosity);
        Require.positive("gas transport", "Prandtl number (-)", prandtl);
    }
}
