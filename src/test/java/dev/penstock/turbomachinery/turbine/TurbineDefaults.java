package dev.penstock.turbomachinery.turbine;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A turbine of which nothing is said. */
public final class TurbineDefaults {

    private TurbineDefaults() {}

    /**
     * @param oxygenRich whether the gas is oxygen-rich
     * @return design for hot gas with nothing fixed and the usual limits
     */
    public static TurbineDesign of(boolean oxygenRich) {
        return of(oxygenRich, false);
    }

    /**
     * @param oxygenRich whether the gas is oxygen-rich
     * @param cold whether the gas is no more than warm, as behind a cooling jacket
     * @return design with nothing fixed and the usual limits of {@link TurbineInputs}
     */
    public static TurbineDesign of(boolean oxygenRich, boolean cold) {
        return new TurbineDesign(
                OptionalDouble.empty(),
                OptionalInt.empty(),
                TurbineType.AUTOMATIC,
                OptionalDouble.empty(),
                TurbineInputs.PITCH_LINE_SPEED_LIMIT.standing().value(),
                TurbineInputs.annulusSpeed(cold).value(),
                TurbineInputs.inletTemperature(oxygenRich).value(),
                TurbineInputs.NOZZLE_ANGLE.standing().value(),
                TurbineInputs.NOZZLE_COEFFICIENT.standing().value(),
                TurbineInputs.BLADE_COEFFICIENT.standing().value(),
                TurbineInputs.EFFICIENCY_FACTOR.standing().value(),
                TurbineInputs.DIAMETER_COEFFICIENT.standing().value(),
                TurbineInputs.SMALLEST_BLADE_HEIGHT.standing().value(),
                oxygenRich);
    }
}
