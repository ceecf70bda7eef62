package dev.penstock.combustion;

import dev.penstock.errors.Require;

/**
 * State of a turbine's working fluid.
 *
 * @param pressure absolute pressure (Pa)
 * @param temperature temperature (K)
 * @param density density (kg/m³)
 * @param enthalpy absolute specific enthalpy (J/kg)
 * @param entropy specific entropy (J/(kg·K))
 * @param isobaricHeatCapacity cp (J/(kg·K))
 * @param gamma isentropic exponent (-)
 * @param soundSpeed speed of sound (m/s)
 * @param wet whether liquid is among it
 */
public record WorkingState(
        double pressure,
        double temperature,
        double density,
        double enthalpy,
        double entropy,
        double isobaricHeatCapacity,
        double gamma,
        double soundSpeed,
        boolean wet) {

    public WorkingState {
        Require.positive("working fluid", "pressure (Pa)", pressure);
        Require.positive("working fluid", "temperature (K)", temperature);
        Require.positive("working fluid", "density (kg/m³)", density);
        Require.finite("working fluid", "enthalpy (J/kg)", enthalpy);
        Require.finite("working fluid", "entropy (J/(kg·K))", entropy);
        Require.positive("working fluid", "gamma (-)", gamma);
    }

    /**
     * A state that is gas throughout.
     *
     * @param pressure absolute pressure (Pa)
     * @param temperature temperature (K)
     * @param density density (kg/m³)
     * @param enthalpy absolute specific enthalpy (J/kg)
     * @param entropy specific entropy (J/(kg·K))
     * @param isobaricHeatCapacity cp (J/(kg·K))
     * @param gamma isentropic exponent (-)
     * @param soundSpeed speed of sound (m/s)
     */
    public WorkingState(
            double pressure,
            double temperature,
            double density,
            double enthalpy,
            double entropy,
            double isobaricHeatCapacity,
            double gamma,
            double soundSpeed) {
        this(pressure, temperature, density, enthalpy, entropy, isobaricHeatCapacity, gamma, soundSpeed, false);
    }
}
