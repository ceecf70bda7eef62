package dev.penstock.combustion.gas;

import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import java.util.List;
import java.util.Map;

/**
 * Burnt gas, with any condensed carbon or water carried along. Enthalpy is relative to the elements at 298.15 K and 1 bar.
 *
 * @param pressure absolute pressure (Pa)
 * @param temperature temperature (K)
 * @param density density of the whole mixture (kg/m³)
 * @param enthalpy specific enthalpy (J/kg)
 * @param entropy specific entropy (J/(kg·K))
 * @param molarMass mass over moles of gas (kg/mol), condensed mass included
 * @param equilibriumHeatCapacity cp with shifting composition (J/(kg·K))
 * @param frozenHeatCapacity cp with frozen composition (J/(kg·K))
 * @param gammaS isentropic exponent −(∂ln p/∂ln v)_s with shifting composition (-)
 * @param soundSpeed equilibrium speed of sound (m/s)
 * @param moleFractions moles of each species per mole of mixture, gas and condensed (-), largest first
 * @param condensedMassFraction mass fraction of condensed species (-)
 * @param transport viscosity and conductivities of the gas
 * @param warnings what the reader must know
 */
public record GasState(
        double pressure,
        double temperature,
        double density,
        double enthalpy,
        double entropy,
        double molarMass,
        double equilibriumHeatCapacity,
        double frozenHeatCapacity,
        double gammaS,
        double soundSpeed,
        Map<String, Double> moleFractions,
        double condensedMassFraction,
        GasTransport transport,
        List<Warning> warnings) {

    public GasState {
        Require.positive("gas state", "pressure (Pa)", pressure);
        Require.positive("gas state", "temperature (K)", temperature);
        Require.positive("gas state", "density (kg/m³)", density);
        Require.finite("gas state", "enthalpy (J/kg)", enthalpy);
        Require.finite("gas state", "entropy (J/(kg·K))", entropy);
        Require.positive("gas state", "gamma_s (-)", gammaS);
        moleFractions = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(moleFractions));
        warnings = List.copyOf(warnings);
    }
}
