package dev.penstock.turbomachinery.electric;

import dev.penstock.errors.Require;

/**
 * Electric drive of an engine's pumps.
 *
 * @param shaftPower power at the motor shafts (W)
 * @param batteryPower power drawn from the battery (W)
 * @param batteryEnergy energy that the full battery holds (J)
 * @param motorMass motors (kg)
 * @param inverterMass inverters (kg)
 * @param batteryMass battery (kg)
 * @param energyLimited whether the energy sizes the battery; otherwise its power does
 * @param heat waste heat of motors and inverters that something must carry off (W)
 */
public record ElectricSizing(
        double shaftPower,
        double batteryPower,
        double batteryEnergy,
        double motorMass,
        double inverterMass,
        double batteryMass,
        boolean energyLimited,
        double heat) {

    public ElectricSizing {
        Require.positive("electric drive", "shaft power (W)", shaftPower);
        Require.positive("electric drive", "battery power (W)", batteryPower);
        Require.positive("electric drive", "battery energy (J)", batteryEnergy);
        Require.positive("electric drive", "battery mass (kg)", batteryMass);
        Require.notNegative("electric drive", "heat (W)", heat);
    }

    /** @return motors, inverters and battery (kg) */
    public double mass() {
        return motorMass + inverterMass + batteryMass;
    }
}
