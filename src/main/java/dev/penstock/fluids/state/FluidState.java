package dev.penstock.fluids.state;

import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import java.util.OptionalDouble;

/**
 * State of a pure fluid or fixed mixture. Enthalpy and entropy are relative to the fluid's own zero: only differences
 * between states of the same fluid mean something; {@link Propellant#absoluteEnthalpy} ties them to the elements.
 *
 * @param fluid fluid id
 * @param pressure absolute pressure (Pa)
 * @param temperature temperature (K)
 * @param density mass density (kg/m³)
 * @param enthalpy specific enthalpy (J/kg)
 * @param entropy specific entropy (J/(kg·K))
 * @param isobaricHeatCapacity specific heat at constant pressure (J/(kg·K)); in a two-phase state that of the saturated
 *     liquid
 * @param isochoricHeatCapacity specific heat at constant volume (J/(kg·K)); in a two-phase state as above
 * @param soundSpeed speed of sound (m/s); in a two-phase state that of the saturated liquid
 * @param viscosity dynamic viscosity (Pa·s)
 * @param conductivity thermal conductivity (W/(m·K))
 * @param phase phase
 * @param vapourPressure vapour pressure at this temperature (Pa); empty above the critical temperature
 */
public record FluidState(
        String fluid,
        double pressure,
        double temperature,
        double density,
        double enthalpy,
        double entropy,
        double isobaricHeatCapacity,
        double isochoricHeatCapacity,
        double soundSpeed,
        double viscosity,
        double conductivity,
        Phase phase,
        OptionalDouble vapourPressure) {

    public FluidState {
        Require.positive(fluid, "pressure (Pa)", pressure);
        Require.positive(fluid, "temperature (K)", temperature);
        Require.positive(fluid, "density (kg/m³)", density);
        Require.finite(fluid, "enthalpy (J/kg)", enthalpy);
        Require.finite(fluid, "entropy (J/(kg·K))", entropy);
        Require.positive(fluid, "cp (J/(kg·K))", isobaricHeatCapacity);
        Require.positive(fluid, "cv (J/(kg·K))", isochoricHeatCapacity);
        Require.positive(fluid, "speed of sound (m/s)", soundSpeed);
        Require.positive(fluid, "viscosity (Pa·s)", viscosity);
        Require.positive(fluid, "conductivity (W/(m·K))", conductivity);
    }

    /** @return Prandtl number cp·μ/k (-) */
    public double prandtl() {
        return isobaricHeatCapacity * viscosity / conductivity;
    }
}
