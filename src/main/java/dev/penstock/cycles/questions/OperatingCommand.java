package dev.penstock.cycles.questions;

import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * What a built engine is asked to do.
 *
 * @param throttle chamber pressure over that of the design (-)
 * @param mixtureRatio oxidizer over fuel leaving the tanks (-); empty for that of the design
 * @param oxidizerTankPressure pressure in the oxidizer tank (Pa); empty for that of the design
 * @param fuelTankPressure pressure in the fuel tank (Pa); empty for that of the design
 */
public record OperatingCommand(
        double throttle,
        OptionalDouble mixtureRatio,
        OptionalDouble oxidizerTankPressure,
        OptionalDouble fuelTankPressure) {

    public OperatingCommand {
        Require.within("operating point", "throttle (-)", throttle, 0.02, 1.5);
        mixtureRatio.ifPresent(r -> Require.positive("operating point", "mixture ratio (-)", r));
    }

    /**
     * @param throttle chamber pressure over that of the design (-)
     * @return that throttle setting with everything else as designed
     */
    public static OperatingCommand throttle(double throttle) {
        return new OperatingCommand(throttle, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * @param ratio mixture ratio (-)
     * @return this command at that mixture ratio
     */
    public OperatingCommand withMixtureRatio(double ratio) {
        return new OperatingCommand(throttle, OptionalDouble.of(ratio), oxidizerTankPressure, fuelTankPressure);
    }
}
