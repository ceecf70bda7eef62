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

    /**
     * @param efficiency total to static (-)
     * @param leavingVelocity velocity behind the last rotor (m/s)
     * @return static state there: warmer, and so thinner, than behind an isentropic expansion
     */
    WorkingState behind(double efficiency, double leavingVelocity) {
        double enthalpy = duty.inletEnthalpy() - efficiency * drop - 0.5 * leavingVelocity * leavingVelocity;
        // at a wild velocity ratio the triangles' leaving velocity can hold more than the loss; no state is colder than
        // the ideal one
        return duty.gas().atPressureEnthalpy(duty.exitPressure(), Math.max(enthalpy, ideal.enthalpy()));
    }
}
