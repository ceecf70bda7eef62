package dev.penstock.turbomachinery.pump;

import dev.penstock.fluids.Propellant;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A pump of which nothing is said. */
public final class PumpDefaults {

    private PumpDefaults() {}

    /**
     * @param propellant what is pumped
     * @return design with nothing fixed and the usual limits of {@link PumpInputs}
     */
    public static PumpDesign of(Propellant propellant) {
        var tip = PumpInputs.tipSpeed(ImpellerMaterial.usual(propellant), propellant);
        return new PumpDesign(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                PumpType.AUTOMATIC,
                OptionalDouble.empty(),
                tip.value(),
                tip.source(),
                PumpInputs.inducerTipSpeed(propellant).value(),
                PumpInputs.INDUCER_FLOW_COEFFICIENT.standing().value(),
                PumpInputs.INDUCER_HUB_RATIO.standing().value(),
                PumpInputs.suppression(propellant).value(),
                PumpInputs.suctionMargin(propellant).value(),
                PumpInputs.specificSpeed(false).value(),
                PumpInputs.bearingSpeed(propellant).value(),
                PumpInputs.SHAFT_STRESS.standing().value(),
                PumpInputs.smallestShaft(false).value(),
                PumpInputs.EFFICIENCY_FACTOR.standing().value());
    }
}
