package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;
import dev.penstock.turbomachinery.pump.PumpDesign;
import java.util.OptionalDouble;

/**
 * A slow pump before the main pump, so that the main pump may turn faster.
 *
 * @param pressureRise pressure that it adds (Pa); empty for what the main pump's suction needs at the speed that its other
 *     limits allow
 * @param drive what turns it
 * @param driveEfficiency its shaft power over the power of what drives it (-)
 * @param pump the pump
 */
public record BoostDesign(OptionalDouble pressureRise, Drive drive, double driveEfficiency, PumpDesign pump) {

    /** What turns a boost pump. */
    public enum Drive {
        /** A turbine on liquid from behind the main pump, which then passes the main pump again. */
        LIQUID,
        /** A gear from the main shaft. */
        GEAR
    }

    public BoostDesign {
        pressureRise.ifPresent(r -> Require.positive("boost pump", "pressure rise (Pa)", r));
        Require.within("boost pump", "drive efficiency (-)", driveEfficiency, 0.05, 1);
    }
}
