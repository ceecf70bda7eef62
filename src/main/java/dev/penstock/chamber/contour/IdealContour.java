package dev.penstock.chamber.contour;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Wall that turns the flow to a uniform stream parallel to the axis, by the method of characteristics, and the same wall cut
 * short.
 * <pre>
 * kernel      C− lines from the throat arc until the axis reaches the design Mach number at D
 * uniform     beyond the straight C+ from D
 * turning     between both: each C+ from the last C− line is built from the C− that end on its neighbour downstream
 * wall        where the mass flow over a C+, counted from the last C− line, equals the flow between that line's point and N
 * </pre>
 * Source of the method: [zucrow-1977]. A full ideal contour is longer than it is worth; cut at a given area ratio and length
 * it is the truncated ideal contour, free of the internal shock of a parabola. Constant γ; no boundary layer is allowed for.
 * Lengths are in throat radii.
 */
public final class IdealContour {

    public static final ModelCard CARD = new ModelCard(
            "chamber.ideal_contour",
            "Truncated ideal contour by the method of characteristics",
            "C±: dr/dx = tan(θ ± μ); wall from mass flow over each C+",
            "constant γ, design Mach number 1.5 to 9",
            "wall radius about 0.3 %",
            List.of("zucrow-1977", "sauer-1947"));

    private static final double FIRST_ANGLE = Math.toRadians(6);
    private static final double LARGEST_ANGLE = Math.toRadians(50);
    private static final int ARC_STEPS = 30;
    private static final int POINTS_BEYOND = 4; // carried on past the wall, for the next line upstream
    private static final int UNIFORM_POINTS = 48;

    private IdealContour() {}

    /**
     * The full-length wall downstream of the throat.
     *
     * @param designMach Mach number of the uniform exit stream (-), 1.5 to 9
     * @param gamma isentropic exponent (-)
     * @param upstreamCurvature wall curvature radius upstream of the throat (throat radii)
     * @param arc wall curvature radius downstream of the throat (throat radii)
     * @return wall points from the throat to the exit, in throat radii
     */
    public static List<ContourPoint> full(double designMach, double gamma, double upstreamCurvature, double arc) {
        Require.within(CARD.title(), "design Mach number (-)", designMach, 1.5, 9);
        Require.within(CARD.title(), "gamma (-)", gamma, 1.05, 1.67);
        CharacteristicGas gas = new CharacteristicGas(gamma);
        return ofArc(gas, arcAngle(gas, designMach, upstreamCurvature, arc), upstreamCurvature, arc);
    }

    /** The wall whose arc ends at an angle; its design Mach number is what the axis reaches by the arc's last wave. */
    private static List<ContourPoint> ofArc(CharacteristicGas gas, double angle, double upstreamCurvature, double arc) {
        List<ContourPoint> wall = new ArrayList<>();
        for (int i = 0; i < ARC_STEPS; i++) {
            double a = angle * i / ARC_STEPS;
            wall.add(new ContourPoint(arc * Math.sin(a), 1 + arc * (1 - Math.cos(a))));
        }
        wall.addAll(turning(gas, kernel(gas, angle, upstreamCurvature, arc).line()));
        return wall;
    }

    /**
     * Ideal wall cut at a given area ratio and length.
     *
     * @param areaRatio exit area over throat area (-), 2 to 400
     * @param lengthFraction length over that of a 15° cone (-)
     * @param gamma isentropic exponent (-)
     * @param upstreamCurvature wall curvature radius upstream of the throat (throat radii)
     * @param arc wall curvature radius downstream of the throat (throat radii)
     * @return wall points from the throat to the exit, in throat radii
     * @throws dev.penstock.errors.OutsideValidity if the wall would have to turn more sharply than the method stands
     */
    public static List<ContourPoint> truncated(
            double areaRatio, double lengthFraction, double gamma, double upstreamCurvature, double arc) {
        Require.within(CARD.title(), "area ratio (-)", areaRatio, 2, 400);
        double length = lengthFraction * ContourBuilder.coneLength(areaRatio, 1, arc, Math.toRadians(15));
        CharacteristicGas gas = new CharacteristicGas(gamma);
        // The arc of the full-length wall is the gentlest that reaches the area ratio at all.
        double low = arcAngle(gas, gas.machAtAreaRatio(1.03 * areaRatio), upstreamCurvature, arc);
        double high = low * 1.15;
        while (cut(ofArc(gas, high, upstreamCurvature, arc), areaRatio).x() > length) {
            low = high;
            high = Require.within(CARD.title(), "arc angle (rad)", high * 1.15, 0, LARGEST_ANGLE);
        }
        double angle = RootFinder.between(
                        "arc angle of a truncated ideal contour",
                        a -> cut(ofArc(gas, a, upstreamCurvature, arc), areaRatio)
                                        .x()
                                - length,
                        low,
                        high,
                        1e-5)
                .value();
        List<ContourPoint> whole = ofArc(gas, angle, upstreamCurvature, arc);
        ContourPoint end = cut(whole, areaRatio);
        List<ContourPoint> kept = new ArrayList<>(
                whole.stream().filter(p -> p.x() < end.x() - 1e-6).toList());
        kept.add(end);
        return kept;
    }

    /** Where the wall reaches an area ratio. */
    private static ContourPoint cut(List<ContourPoint> wall, double areaRatio) {
        double radius = Math.sqrt(areaRatio);
        for (int i = 1; i < wall.size(); i++) {
            ContourPoint a = wall.get(i - 1);
            ContourPoint b = wall.get(i);
            if (b.radius() >= radius) {
                double t = (radius - a.radius()) / (b.radius() - a.radius());
                return new ContourPoint(a.x() + t * (b.x() - a.x()), radius);
            }
        }
        throw new NotConverged(CARD.title(), wall.size(), Double.NaN, "the wall ends before area ratio " + areaRatio);
    }

    /** Wall angle at the end of the arc whose last wave brings the axis to the design Mach number. */
    private static double arcAngle(CharacteristicGas gas, double designMach, double upstreamCurvature, double arc) {
        double high = FIRST_ANGLE;
        while (kernel(gas, high, upstreamCurvature, arc).axisMach() < designMach) {
            high *= 1.4;
            Require.within(CARD.title(), "arc angle (rad)", high, 0, LARGEST_ANGLE);
        }
        double low = high == FIRST_ANGLE ? FIRST_ANGLE / 20 : high / 1.4;
        return RootFinder.between(
                        "arc angle of an ideal contour",
                        a -> kernel(gas, a, upstreamCurvature, arc).axisMach() - designMach,
                        low,
                        high,
                        1e-8)
                .value();
    }

    private static CharacteristicKernel kernel(
            CharacteristicGas gas, double angle, double upstreamCurvature, double arc) {
        CharacteristicKernel kernel = new CharacteristicKernel(gas, upstreamCurvature, arc);
        for (int i = 1; i <= ARC_STEPS; i++) {
            kernel.advanceTo(angle * i / ARC_STEPS);
        }
        return kernel;
    }

    /** Wall points from the end of the arc to the exit. */
    private static List<ContourPoint> turning(CharacteristicGas gas, List<CharacteristicPoint> last) {
        int n = last.size();
        double[] above = new double[n]; // mass flow between a point of the last C− line and the wall
        for (int j = 1; j < n; j++) {
            above[j] = above[j - 1] + last.get(j).massFlowTo(last.get(j - 1), gas);
        }
        List<ContourPoint> wall = new ArrayList<>();
        List<CharacteristicPoint> downstream = uniform(gas, last.get(n - 1), above[n - 1]);
        wall.add(wallPoint(gas, downstream, above[n - 1]));
        for (int j = n - 2; j > 0; j--) {
            List<CharacteristicPoint> rising = new ArrayList<>();
            CharacteristicPoint here = last.get(j);
            rising.add(here);
            double passed = 0;
            int beyond = 0;
            for (int i = 1; i < downstream.size() && beyond < POINTS_BEYOND; i++) {
                CharacteristicPoint next = UnitProcess.interior(gas, downstream.get(i), here);
                passed += here.massFlowTo(next, gas);
                rising.add(next);
                here = next;
                beyond += passed >= above[j] ? 1 : 0;
            }
            if (passed < above[j]) {
                throw new NotConverged(CARD.title(), n - j, above[j] - passed, "the turning region runs out of waves");
            }
            wall.add(wallPoint(gas, rising, above[j]));
            downstream = rising;
        }
        wall.add(new ContourPoint(last.get(0).x(), last.get(0).r()));
        Collections.reverse(wall);
        List<ContourPoint> ordered = new ArrayList<>();
        for (ContourPoint point : wall) {
            if (ordered.isEmpty() || point.x() > ordered.get(ordered.size() - 1).x() + 1e-6) {
                ordered.add(point);
            }
        }
        return ordered;
    }

    /** The straight C+ of the uniform stream from the axis to a little beyond the wall. */
    private static List<CharacteristicPoint> uniform(CharacteristicGas gas, CharacteristicPoint axis, double massFlow) {
        double slope = Math.tan(axis.mu());
        double exit = 1.15 * Math.sqrt(massFlow / gas.massFlux(axis.mach()));
        List<CharacteristicPoint> points = new ArrayList<>();
        for (int i = 0; i <= UNIFORM_POINTS; i++) {
            double r = exit * i / UNIFORM_POINTS;
            points.add(new CharacteristicPoint(axis.x() + r / slope, r, 0, axis.nu(), axis.mach()));
        }
        return points;
    }

    private static ContourPoint wallPoint(CharacteristicGas gas, List<CharacteristicPoint> rising, double massFlow) {
        double passed = 0;
        for (int i = 1; i < rising.size(); i++) {
            CharacteristicPoint a = rising.get(i - 1);
            CharacteristicPoint b = rising.get(i);
            double step = a.massFlowTo(b, gas);
            if (passed + step >= massFlow) {
                double t = (massFlow - passed) / step;
                return new ContourPoint(a.x() + t * (b.x() - a.x()), a.r() + t * (b.r() - a.r()));
            }
            passed += step;
        }
        CharacteristicPoint end = rising.get(rising.size() - 1);
        return new ContourPoint(end.x(), end.r());
    }
}
