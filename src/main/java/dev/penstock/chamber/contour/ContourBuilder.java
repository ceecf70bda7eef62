package dev.penstock.chamber.contour;

import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Draws the wall: cylinder, fillet, convergent cone, throat arcs, then a cone or a parabola.
 * <pre>
 * cone length   L = [r_t (√ε − 1) + R_d (sec α − 1)] / tan α
 * bell length   L = fraction · (length of the 15° cone with the same throat arc)
 * parabola      quadratic Bézier curve from the end of the throat arc (angle θ_n) to the exit (angle θ_e), its middle
 *               control point where the two tangents meet
 * cylinder      A_c L_c = L* A_t − volume of the convergent part
 * </pre>
 * Sources: [nasa-sp-125] chapter 4, [rao-1960]. Length unit is that of the throat radius given, metres.
 */
public final class ContourBuilder {

    public static final ModelCard CARD = new ModelCard(
            "chamber.contour",
            "Wall contour: cylinder, arcs, cone or parabolic bell",
            "L = [r_t (√ε − 1) + R_d (sec α − 1)] / tan α; bell length as a fraction of the 15° cone",
            "area ratio above 1; length fraction 0.6 to 1",
            "geometry, exact",
            List.of("nasa-sp-125", "rao-1960"));

    private static final int ARC_POINTS = 24;
    private static final int WALL_POINTS = 80;
    private static final int CYLINDER_POINTS = 12;
    private static final double FILLET = 1.0; // fillet radius over throat radius; common practice, no source
    private static final double FIFTEEN_DEGREES = Math.toRadians(15);

    /** The divergent part just added: wall angle at the exit (rad). */
    private record Divergent(double exitAngle, Optional<Warning> warning) {}

    private ContourBuilder() {}

    /**
     * A wall and what its reader must know.
     *
     * @param contour the wall
     * @param exitAngle wall angle at the exit (rad)
     * @param warnings where the wall is not quite what was asked for
     */
    public record Drawing(ChamberContour contour, double exitAngle, List<Warning> warnings) {

        public Drawing {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * @param combustor combustor
     * @param nozzle nozzle
     * @param areaRatio exit area over throat area (-)
     * @param throatRadius throat radius (m)
     * @return the wall
     */
    public static Drawing draw(CombustorDesign combustor, NozzleDesign nozzle, double areaRatio, double throatRadius) {
        Require.positive(CARD.title(), "throat radius (m)", throatRadius);
        Require.within(CARD.title(), "area ratio (-)", areaRatio, 1 + 1e-9, 1e4);
        List<ContourPoint> points = convergent(combustor, nozzle, throatRadius);
        double throatArea = Math.PI * throatRadius * throatRadius;
        double chamberRadius = throatRadius * Math.sqrt(combustor.contractionRatio());
        double volume = combustor.characteristicLength() * throatArea - volume(points);
        List<Warning> warnings = new ArrayList<>();
        if (volume < 0) {
            warnings.add(new Warning(
                    CARD.id(),
                    String.format(
                            Locale.ROOT,
                            "the convergent part alone has a characteristic length of %.3g m, more than the %.3g m asked for; "
                                    + "no cylinder is drawn (a smaller contraction ratio would leave room)",
                            volume(points) / throatArea,
                            combustor.characteristicLength())));
            volume = 0;
        }
        double cylinder = volume / (throatArea * combustor.contractionRatio());
        prependCylinder(points, chamberRadius, cylinder);
        double chamberLength = -points.get(0).x();

        double downstream = nozzle.downstreamCurvature() * throatRadius;
        Divergent divergent =
                switch (nozzle.shape()) {
                    case CONE -> cone(points, nozzle.coneHalfAngle(), areaRatio, throatRadius, downstream);
                    case BELL -> bell(points, nozzle.lengthFraction(), areaRatio, throatRadius, downstream);
                    case IDEAL -> ideal(points, nozzle, areaRatio, throatRadius);
                };
        divergent.warning().ifPresent(warnings::add);
        double curvature = throatRadius * (nozzle.upstreamCurvature() + nozzle.downstreamCurvature()) / 2;
        double nozzleLength = points.get(points.size() - 1).x();
        return new Drawing(
                new ChamberContour(points, throatRadius, curvature, chamberRadius, chamberLength, nozzleLength),
                divergent.exitAngle(),
                warnings);
    }

    /**
     * @param areaRatio exit area over throat area (-)
     * @param throatRadius throat radius (m)
     * @param arcRadius radius of the arc downstream of the throat (m)
     * @param halfAngle half angle (rad)
     * @return length of a conical nozzle from the throat (m)
     */
    public static double coneLength(double areaRatio, double throatRadius, double arcRadius, double halfAngle) {
        return (throatRadius * (Math.sqrt(areaRatio) - 1) + arcRadius * (1 / Math.cos(halfAngle) - 1))
                / Math.tan(halfAngle);
    }

    /** From the end of the cylinder to the throat, throat included. */
    private static List<ContourPoint> convergent(CombustorDesign combustor, NozzleDesign nozzle, double rt) {
        double chamberRadius = rt * Math.sqrt(combustor.contractionRatio());
        double upstream = nozzle.upstreamCurvature() * rt;
        double fillet = FILLET * rt;
        double angle = combustor.convergentHalfAngle();
        double drop = (upstream + fillet) * (1 - Math.cos(angle));
        double straight = chamberRadius - rt - drop;
        if (straight < 0) {
            // A small contraction leaves no room for the cone: both arcs end at a smaller angle.
            angle = Math.acos(1 - (chamberRadius - rt) / (upstream + fillet));
            straight = 0;
        }
        double arcStart = -upstream * Math.sin(angle);
        double coneStart = arcStart - straight / Math.tan(angle);
        double filletStart = coneStart - fillet * Math.sin(angle);
        List<ContourPoint> points = new ArrayList<>();
        for (int i = 0; i <= ARC_POINTS; i++) {
            double a = angle * i / ARC_POINTS;
            points.add(
                    new ContourPoint(filletStart + fillet * Math.sin(a), chamberRadius - fillet * (1 - Math.cos(a))));
        }
        if (straight > 1e-9 * rt) {
            double coneRadius = rt + upstream * (1 - Math.cos(angle));
            for (int i = 1; i <= CYLINDER_POINTS; i++) {
                double t = (double) i / CYLINDER_POINTS;
                points.add(new ContourPoint(coneStart + t * (arcStart - coneStart), coneRadius + (1 - t) * straight));
            }
        }
        for (int i = 1; i <= ARC_POINTS; i++) {
            double a = angle * (ARC_POINTS - i) / ARC_POINTS;
            points.add(new ContourPoint(-upstream * Math.sin(a), rt + upstream * (1 - Math.cos(a))));
        }
        return points;
    }

    private static void prependCylinder(List<ContourPoint> points, double radius, double length) {
        double end = points.get(0).x();
        if (length <= 1e-9 * radius) {
            return;
        }
        List<ContourPoint> cylinder = new ArrayList<>();
        for (int i = 0; i < CYLINDER_POINTS; i++) {
            cylinder.add(new ContourPoint(end - length * (1 - (double) i / CYLINDER_POINTS), radius));
        }
        points.addAll(0, cylinder);
    }

    private static Divergent cone(List<ContourPoint> points, double angle, double areaRatio, double rt, double arc) {
        double exit = rt * Math.sqrt(areaRatio);
        double angleUsed = addThroatArc(points, angle, exit, rt, arc);
        ContourPoint start = points.get(points.size() - 1);
        double length = coneLength(areaRatio, rt, arc, angle);
        if (angleUsed == angle && exit - start.radius() > 1e-9 * rt) {
            for (int i = 1; i <= WALL_POINTS; i++) {
                double t = graded(i);
                points.add(new ContourPoint(
                        start.x() + t * (length - start.x()), start.radius() + t * (exit - start.radius())));
            }
        }
        return new Divergent(angleUsed, Optional.empty());
    }

    private static Divergent bell(List<ContourPoint> points, double fraction, double areaRatio, double rt, double arc) {
        RaoAngles.Angles angles = RaoAngles.of(areaRatio, fraction);
        double exit = rt * Math.sqrt(areaRatio);
        double length = fraction * coneLength(areaRatio, rt, arc, FIFTEEN_DEGREES);
        double slope = Math.tan(angles.inflection());
        double nx = arc * Math.sin(angles.inflection());
        double nr = rt + arc * (1 - Math.cos(angles.inflection()));
        double chord = (exit - nr) / (length - nx);
        if (!(length > nx && exit > nr && slope > chord && Math.tan(angles.exit()) < chord)) {
            // So small an area ratio has no room for a parabola between the chart's angles: a 15° cone is drawn.
            Divergent drawn = cone(points, FIFTEEN_DEGREES, areaRatio, rt, arc);
            return new Divergent(
                    drawn.exitAngle(),
                    Optional.of(new Warning(
                            CARD.id(),
                            String.format(
                                    Locale.ROOT,
                                    "a bell of length fraction %.3g does not fit area ratio %.4g; a 15° cone is drawn",
                                    fraction,
                                    areaRatio))));
        }
        addThroatArc(points, angles.inflection(), exit, rt, arc);
        double exitSlope = Math.tan(angles.exit());
        double qx = (exit - exitSlope * length - nr + slope * nx) / (slope - exitSlope);
        double qr = nr + slope * (qx - nx);
        for (int i = 1; i <= WALL_POINTS; i++) {
            double t = graded(i);
            double a = (1 - t) * (1 - t);
            double b = 2 * t * (1 - t);
            points.add(new ContourPoint(a * nx + b * qx + t * t * length, a * nr + b * qr + t * t * exit));
        }
        return new Divergent(angles.exit(), angles.warning());
    }

    private static Divergent ideal(List<ContourPoint> points, NozzleDesign nozzle, double areaRatio, double rt) {
        TruncatedIdeal wall = TruncatedIdeal.of(nozzle, areaRatio);
        points.addAll(wall.scaled(rt));
        return new Divergent(wall.exitAngle(), Optional.empty());
    }

    /** Arc downstream of the throat up to an angle, or to the exit radius if that comes first; the angle reached. */
    private static double addThroatArc(List<ContourPoint> points, double angle, double exit, double rt, double arc) {
        double reach = Math.acos(Math.max(-1, 1 - (exit - rt) / arc));
        double end = Math.min(angle, reach);
        for (int i = 1; i <= ARC_POINTS; i++) {
            double a = end * i / ARC_POINTS;
            points.add(new ContourPoint(arc * Math.sin(a), rt + arc * (1 - Math.cos(a))));
        }
        return end;
    }

    /** Steps that widen away from the throat, where the flow changes most. */
    private static double graded(int i) {
        double t = (double) i / WALL_POINTS;
        return t * (0.3 + 0.7 * t);
    }

    private static double volume(List<ContourPoint> points) {
        double volume = 0;
        for (int i = 1; i < points.size(); i++) {
            volume += ChamberContour.frustum(points.get(i - 1), points.get(i));
        }
        return volume;
    }
}
