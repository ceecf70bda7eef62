package dev.penstock.chamber;

import dev.penstock.chamber.design.ChamberInputs;
import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.chamber.design.NozzleDesign;
import java.util.Optional;
import java.util.OptionalDouble;

/** Chambers for tests: usual in all that a test does not ask about. */
public final class Designs {

    private Designs() {}

    /** A combustor of that contraction ratio and L* (m), with a 30° convergent cone, no film and liquid injection. */
    public static CombustorDesign combustor(double contractionRatio, double characteristicLength) {
        return filmed(contractionRatio, characteristicLength, 0);
    }

    /** The same with that share of the fuel as a film along the wall. */
    public static CombustorDesign filmed(double contractionRatio, double characteristicLength, double film) {
        return new CombustorDesign(
                contractionRatio,
                characteristicLength,
                Math.toRadians(30),
                film,
                InjectorDesign.of(false, false),
                Optional.empty());
    }

    /** An 80 % bell of that area ratio. */
    public static NozzleDesign bell(double areaRatio) {
        return bell(areaRatio, ChamberInputs.LENGTH_FRACTION.standing().value());
    }

    /** A bell of that area ratio and length over that of a 15° cone. */
    public static NozzleDesign bell(double areaRatio, double lengthFraction) {
        return NozzleDesign.usual(
                OptionalDouble.of(areaRatio),
                OptionalDouble.empty(),
                NozzleDesign.Shape.BELL,
                lengthFraction,
                ChamberInputs.CONE_HALF_ANGLE.standing().value());
    }

    /** An 80 % bell that ends at that static pressure (Pa). */
    public static NozzleDesign bellToExitPressure(double exitPressure) {
        return NozzleDesign.usual(
                OptionalDouble.empty(),
                OptionalDouble.of(exitPressure),
                NozzleDesign.Shape.BELL,
                ChamberInputs.LENGTH_FRACTION.standing().value(),
                ChamberInputs.CONE_HALF_ANGLE.standing().value());
    }

    /** A cone of that area ratio and half angle (rad). */
    public static NozzleDesign cone(double areaRatio, double halfAngle) {
        return NozzleDesign.usual(
                OptionalDouble.of(areaRatio), OptionalDouble.empty(), NozzleDesign.Shape.CONE, 1.0, halfAngle);
    }
}
