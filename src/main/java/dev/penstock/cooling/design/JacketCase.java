package dev.penstock.cooling.design;

import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import java.util.Objects;

/**
 * One question to the jacket solver.
 *
 * @param gas hot side
 * @param coolant coolant
 * @param inletPressure pressure in the inlet manifold (Pa)
 * @param inletEnthalpy coolant enthalpy in the inlet manifold, on the fluid model's own zero (J/kg)
 * @param massFlow coolant flow through the jacket (kg/s)
 * @param design jacket as designed
 * @param heatFluxFactor factor on the computed gas-side coefficient, for uncertainty studies (-); 1 is the model itself
 */
public record JacketCase(
        HotGasProfile gas,
        Propellant coolant,
        double inletPressure,
        double inletEnthalpy,
        double massFlow,
        JacketDesign design,
        double heatFluxFactor) {

    public JacketCase {
        Objects.requireNonNull(gas, "gas");
        Objects.requireNonNull(coolant, "coolant");
        Objects.requireNonNull(design, "design");
        Require.positive("jacket", "inlet pressure (Pa)", inletPressure);
        Require.finite("jacket", "inlet enthalpy (J/kg)", inletEnthalpy);
        Require.positive("jacket", "coolant flow (kg/s)", massFlow);
        Require.positive("jacket", "heat flux factor (-)", heatFluxFactor);
    }

    /**
     * @param newDesign another design
     * @return the same case with that design
     */
    public JacketCase withDesign(JacketDesign newDesign) {
        return new JacketCase(gas, coolant, inletPressure, inletEnthalpy, massFlow, newDesign, heatFluxFactor);
    }

    /**
     * @param pressure pressure in the inlet manifold (Pa)
     * @param enthalpy coolant enthalpy in the inlet manifold (J/kg)
     * @param flow coolant flow (kg/s)
     * @return the same case with another coolant inlet
     */
    public JacketCase withInlet(double pressure, double enthalpy, double flow) {
        return new JacketCase(gas, coolant, pressure, enthalpy, flow, design, heatFluxFactor);
    }
}
