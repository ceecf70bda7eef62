package dev.penstock.turbomachinery.turbine;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;

/**
 * What a cycle offers a turbine.
 *
 * @param gas working fluid
 * @param inletPressure total pressure at the inlet (Pa, absolute)
 * @param inletEnthalpy total enthalpy at the inlet, relative to the elements (J/kg)
 * @param exitPressure static pressure behind the last row (Pa, absolute)
 * @param massFlow mass flow (kg/s)
 */
public record TurbineDuty(
        WorkingFluid gas, double inletPressure, double inletEnthalpy, double exitPressure, double massFlow) {

    public TurbineDuty {
        Require.positive("turbine duty", "inlet pressure (Pa)", inletPressure);
        Require.finite("turbine duty", "inlet enthalpy (J/kg)", inletEnthalpy);
        Require.positive("turbine duty", "exit pressure (Pa)", exitPressure);
        Require.positive("turbine duty", "mass flow (kg/s)", massFlow);
        if (!(exitPressure < inletPressure)) {
            throw new OutsideValidity(
                    "turbine on " + gas.description(),
                    "exit pressure (Pa)",
                    exitPressure,
                    "below the inlet pressure of " + inletPressure + " Pa");
        }
    }

    /** @return pressure ratio inlet total to exit static (-) */
    public double pressureRatio() {
        return inletPressure / exitPressure;
    }
}
