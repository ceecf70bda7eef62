package dev.penstock.chamber.design;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * What a concept says about its nozzle: exactly one of area ratio and exit pressure.
 *
 * @param areaRatio exit area over throat area (-)
 * @param exitPressure static pressure at the exit (Pa)
 * @param shape wall shape
 * @param lengthFraction length over that of a 15° cone of the same area ratio (-), for bells and ideal contours
 * @param coneHalfAngle half angle (rad), for cones
 * @param upstreamCurvature wall curvature radius upstream of the throat, over the throat radius (-)
 * @param downstreamCurvature wall curvature radius downstream of the throat, over the throat radius (-)
 * @param separation criterion for flow separation
 * @param compensation how it follows the ambient pressure
 */
public record NozzleDesign(
        OptionalDouble areaRatio,
        OptionalDouble exitPressure,
        Shape shape,
        double lengthFraction,
        double coneHalfAngle,
        double upstreamCurvature,
        double downstreamCurvature,
        SeparationCriterion separation,
        AltitudeCompensation compensation) {

    /** Shape of the divergent wall. */
    public enum Shape {
        /** Straight wall of a given half angle. */
        CONE,
        /** Parabola with the published optimum angles. */
        BELL,
        /** Truncated ideal contour by the method of characteristics. */
        IDEAL
    }

    private static final String MODEL = "nozzle";
    private static final double UPSTREAM_CURVATURE = 1.5; // [nasa-sp-125]
    private static final double DOWNSTREAM_CURVATURE = 0.382; // [rao-1960]

    public NozzleDesign {
        if (areaRatio.isPresent() == exitPressure.isPresent()) {
            throw new OutsideValidity(
                    MODEL,
                    "number of exit conditions",
                    areaRatio.isPresent() ? 2 : 0,
                    "exactly one of area ratio and exit pressure");
        }
        if (areaRatio.isPresent() && !(areaRatio.getAsDouble() > 1 && areaRatio.getAsDouble() <= 2000)) {
            throw new OutsideValidity(MODEL, "area ratio (-)", areaRatio.getAsDouble(), "above 1, at most 2000");
        }
        exitPressure.ifPresent(p -> Require.positive(MODEL, "exit pressure (Pa)", p));
        Require.within(MODEL, "length fraction (-)", lengthFraction, 0.5, 1.2);
        Require.within(MODEL, "cone half angle (rad)", coneHalfAngle, Math.toRadians(5), Math.toRadians(40));
        Require.within(MODEL, "upstream throat curvature (-)", upstreamCurvature, 0.3, 5);
        Require.within(MODEL, "downstream throat curvature (-)", downstreamCurvature, 0.1, 5);
    }

    /**
     * @param areaRatio exit area over throat area (-), or empty
     * @param exitPressure static pressure at the exit (Pa), or empty
     * @param shape wall shape
     * @param lengthFraction length over that of a 15° cone (-)
     * @param halfAngle cone half angle (rad)
     * @return a nozzle with the usual throat curvatures and separation criterion
     */
    public static NozzleDesign usual(
            OptionalDouble areaRatio,
            OptionalDouble exitPressure,
            Shape shape,
            double lengthFraction,
            double halfAngle) {
        return new NozzleDesign(
                areaRatio,
                exitPressure,
                shape,
                lengthFraction,
                halfAngle,
                UPSTREAM_CURVATURE,
                DOWNSTREAM_CURVATURE,
                ChamberInputs.SEPARATION.standing().value(),
                AltitudeCompensation.NONE);
    }

    /**
     * @param criterion criterion for flow separation
     * @return this nozzle with that criterion
     */
    public NozzleDesign withSeparation(SeparationCriterion criterion) {
        return new NozzleDesign(
                areaRatio,
                exitPressure,
                shape,
                lengthFraction,
                coneHalfAngle,
                upstreamCurvature,
                downstreamCurvature,
                criterion,
                compensation);
    }

    /**
     * @param how how it follows the ambient pressure
     * @return this nozzle with that
     * @throws OutsideValidity if its inner area ratio is not below the stated one
     */
    public NozzleDesign with(AltitudeCompensation how) {
        if (how.inTwo() && areaRatio.isPresent()) {
            Require.within(MODEL, "inner area ratio (-)", how.innerAreaRatio(), 1, areaRatio.getAsDouble());
        }
        return new NozzleDesign(
                areaRatio,
                exitPressure,
                shape,
                lengthFraction,
                coneHalfAngle,
                upstreamCurvature,
                downstreamCurvature,
                separation,
                how);
    }
}
