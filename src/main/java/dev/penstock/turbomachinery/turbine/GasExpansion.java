package dev.penstock.turbomachinery.turbine;

import dev.penstock.combustion.WorkingState;

/** Isentropic expansion of a turbine duty's gas, from the inlet's total state to the exit's static pressure. */
final class GasExpansion {

    final TurbineDuty duty;
    final WorkingState inlet;
    final WorkingState ideal;

    /** Isentropic drop (J/kg). */
    final double drop;

    /** √(2·drop) (m/s). */
    final double spoutingVelocity;

    GasExpansion(TurbineDuty duty) {
        this.duty = duty;
        inlet = duty.gas().atPressureEnthalpy(duty.inletPressure(), duty.inletEnthalpy());
        ideal = duty.gas().atPressureEntropy(duty.exitPressure(), inlet.entropy());
        drop = duty.inletEnthalpy() - ideal.enthalpy();
        spoutingVelocity = Math.sqrt(2 * drop);
    }
}
