package dev.penstock.cycles;

import dev.penstock.errors.Require;
import dev.penstock.turbomachinery.PumpDesign;

/**
 * A slow pump before the main pump, so that the main pump may turn faster. It is driven from the main shaft, through a gear
 * or by liquid, with an efficiency.
 *
 * @param pressureRise pressure that it adds (Pa)
 * @param driveEfficiency its shaft power over the power taken from the main shaft (-)
 * @param pump the pump
 */
public record BoostDesign(double pressureRise, double driveEfficiency, PumpDesign pump) {

    public BoostDesign {
        Require.positive("boost pump", "pressure rise (Pa)", pressureRise);
        Require.within("boost pump", "drive efficiency (-)", driveEfficiency, 0.05, 1);
    }
}
