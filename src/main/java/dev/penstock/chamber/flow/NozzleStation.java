package dev.penstock.chamber.flow;

import dev.penstock.errors.Require;

/**
 * Gas at one station of a one-dimensional isentropic nozzle flow.
 *
 * @param areaRatio area over throat area (-), at least 1; the largest double stands for gas at rest
 * @param pressure static pressure (Pa)
 * @param temperature static temperature (K)
 * @param density density (kg/m³)
 * @param velocity velocity (m/s)
 * @param mach velocity over speed of sound (-)
 * @param enthalpy static enthalpy relative to the elements at 298.15 K (J/kg)
 * @param gamma isentropic exponent, shifting or frozen as the flow is (-)
 * @param specificHeat cp, shifting or frozen as the flow is (J/(kg·K))
 * @param viscosity dynamic viscosity (Pa·s)
 * @param prandtl Prandtl number of the frozen gas (-)
 */
public record NozzleStation(
        double areaRatio,
        double pressure,
        double temperature,
        double density,
        double velocity,
        double mach,
        double enthalpy,
        double gamma,
        double specificHeat,
        double viscosity,
        double prandtl) {

    private static final String MODEL = "nozzle station";

    public NozzleStation {
        Require.within(MODEL, "area ratio (-)", areaRatio, 1 - 1e-9, Double.MAX_VALUE);
        Require.positive(MODEL, "pressure (Pa)", pressure);
        Require.positive(MODEL, "temperature (K)", temperature);
        Require.positive(MODEL, "density (kg/m³)", density);
        Require.notNegative(MODEL, "velocity (m/s)", velocity);
        Require.notNegative(MODEL, "Mach number (-)", mach);
        Require.finite(MODEL, "enthalpy (J/kg)", enthalpy);
        Require.positive(MODEL, "gamma (-)", gamma);
        Require.positive(MODEL, "cp (J/(kg·K))", specificHeat);
        Require.positive(MODEL, "viscosity (Pa·s)", viscosity);
        Require.positive(MODEL, "Prandtl number (-)", prandtl);
    }

    /** @return mass flow per area ρ·v (kg/(m²·s)) */
    public double massFlux() {
        return density * velocity;
    }

    /** @return impulse per mass flow v + p/(ρ·v) (m/s), as at an exit to vacuum */
    public double vacuumImpulse() {
        return velocity + pressure / massFlux();
    }
}
