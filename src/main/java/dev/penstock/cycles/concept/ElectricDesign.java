package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;
import dev.penstock.turbomachinery.electric.ElectricDrive;

/**
 * Electric drive of the pumps.
 *
 * @param drive motors, inverters and battery
 * @param burnTime time that the battery has to last (s)
 */
public record ElectricDesign(ElectricDrive drive, double burnTime) {

    public ElectricDesign {
        Require.positive("electric drive", "burn time (s)", burnTime);
    }
}
