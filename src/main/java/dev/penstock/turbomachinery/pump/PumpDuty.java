package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;

/**
 * What a cycle asks of a pump.
 *
 * @param propellant what is pumped
 * @param inlet total state at the pump inlet, the fluid's own enthalpy
 * @param dischargePressure total pressure at the outlet (Pa, absolute)
 * @param massFlow mass flow delivered (kg/s)
 */
public record PumpDuty(Propellant propellant, FluidState inlet, double dischargePressure, double massFlow) {

    public PumpDuty {
        Require.positive("pump duty", "discharge pressure (Pa)", dischargePressure);
        Require.positive("pump duty", "mass flow (kg/s)", massFlow);
        if (!(dischargePressure > inlet.pressure())) {
            throw new OutsideValidity(
                    "pump of " + propellant.name(),
                    "discharge pressure (Pa)",
                    dischargePressure,
                    "above the inlet pressure of " + inlet.pressure() + " Pa");
        }
    }

    /** @return volume flow at the inlet density (m³/s) */
    public double volumeFlow() {
        return massFlow / inlet.density();
    }
}
