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
        GEAR,
        /** A turbine on gas from before the main turbines, which joins theirs behind them. */
        HOT_GAS,
        /** A turbine in the exhaust of the main turbines, all of which passes it. */
        TURBINE_EXHAUST,
        /** A turbine on fuel that a jacket has warmed, which flows on to where the fuel burns. */
        WARM_FUEL;

        /** @return whether a turbine on gas or on warmed fuel turns it, which takes nothing from the main pump or its shaft */
        public boolean byGas() {
            return this == HOT_GAS || this == TURBINE_EXHAUST || this == WARM_FUEL;
        }
    }

    public BoostDesign {
        pressureRise.ifPresent(r -> Require.positive("boost pump", "pressure rise (Pa)", r));
        Require.within("boost pump", "drive efficiency (-)", driveEfficiency, 0.05, 1);
    }
}
