package dev.penstock.chamber.flow;

import dev.penstock.combustion.gas.GasState;
import dev.penstock.errors.Require;
import dev.penstock.quantities.Constants;

/**
 * Loss-free one-dimensional expansion from rest in the chamber to the exit.
 *
 * @param mode what the composition does
 * @param chamber gas at rest in the chamber, at the nozzle's stagnation pressure
 * @param throat sonic station
 * @param exit exit station
 * @param chamberPressure stagnation pressure of the nozzle flow (Pa)
 * @param characteristicVelocity c* = p_c·A_t/ṁ (m/s)
 * @param vacuumThrustCoefficient F_vac/(p_c·A_t) (-)
 * @param vacuumImpulse effective exhaust velocity in vacuum F_vac/ṁ (m/s)
 */
public record IdealExpansion(
        ExpansionMode mode,
        GasState chamber,
        NozzleStation throat,
        NozzleStation exit,
        double chamberPressure,
        double characteristicVelocity,
        double vacuumThrustCoefficient,
        double vacuumImpulse) {

    private static final String MODEL = "ideal expansion";

    public IdealExpansion {
        Require.positive(MODEL, "chamber pressure (Pa)", chamberPressure);
        Require.positive(MODEL, "characteristic velocity (m/s)", characteristicVelocity);
        Require.positive(MODEL, "thrust coefficient (-)", vacuumThrustCoefficient);
        Require.positive(MODEL, "vacuum impulse (m/s)", vacuumImpulse);
    }

    /** @return exit area over throat area (-) */
    public double areaRatio() {
        return exit.areaRatio();
    }

    /** @return impulse when the ambient pressure equals the exit pressure: the exit velocity (m/s) */
    public double matchedImpulse() {
        return exit.velocity();
    }

    /** @return mean isentropic exponent ln(p_c/p_e)/ln(ρ_c/ρ_e) (-) */
    public double meanExponent() {
        return Math.log(chamberPressure / exit.pressure()) / Math.log(chamber.density() / exit.density());
    }

    /** @return specific impulse in vacuum (s) */
    public double vacuumSpecificImpulse() {
        return vacuumImpulse / Constants.STANDARD_GRAVITY;
    }
}
