package dev.penstock.claims.picture;

import dev.penstock.errors.InvalidInput;
import java.util.Locale;

/**
 * The rim of a round exit, which a picture shows as an ellipse: the two ends of its longest diameter and any third point of it.
 * <pre>
 * a = half of the longest diameter,  (u, v) = third point along and across it, from the centre
 * b = |v|/√(1 - (u/a)²),  sin θ = b/a
 * </pre>
 * θ is the angle between the nozzle's axis and the plane of the picture.
 *
 * @param longest longest diameter
 * @param x third point, to the right (px)
 * @param y third point, downwards (px)
 */
public record Rim(Segment longest, double x, double y) {

    /** A third point nearer to an end says nothing of the width. */
    private static final double OUTERMOST = 0.95;

    private static final double ROUND = 1.02;

    public Rim {
        double half = 0.5 * longest.length();
        if (!(Math.abs(along(longest, x, y)) <= OUTERMOST * half)) {
            throw new InvalidInput(
                    "",
                    "marks",
                    String.format(Locale.ROOT, "(%.1f, %.1f)", x, y),
                    "the third mark of the exit belongs on its rim between the two others, best half-way");
        }
        if (!(ratio(longest, x, y) <= ROUND)) {
            throw new InvalidInput(
                    "",
                    "marks",
                    String.format(Locale.ROOT, "(%.1f, %.1f)", x, y),
                    "the first two marks of the exit belong on the ends of its longest diameter, which this mark makes the shorter one");
        }
    }

    private static double along(Segment s, double x, double y) {
        double cx = 0.5 * (s.x1() + s.x2());
        double cy = 0.5 * (s.y1() + s.y2());
        return ((x - cx) * (s.x2() - s.x1()) + (y - cy) * (s.y2() - s.y1())) / s.length();
    }

    private static double across(Segment s, double x, double y) {
        double cx = 0.5 * (s.x1() + s.x2());
        double cy = 0.5 * (s.y1() + s.y2());
        return ((y - cy) * (s.x2() - s.x1()) - (x - cx) * (s.y2() - s.y1())) / s.length();
    }

    private static double ratio(Segment s, double x, double y) {
        double half = 0.5 * s.length();
        double u = along(s, x, y) / half;
        return Math.abs(across(s, x, y)) / half / Math.sqrt(1 - u * u);
    }

    /** @return shorter over longer diameter (-): the sine of the tilt of the axis out of the picture's plane */
    public double ratio() {
        return Math.min(1, ratio(longest, x, y));
    }

    /**
     * @param error half of the 90 % interval of each mark (px)
     * @return half of that of the ratio (-)
     */
    double ratioError(double error) {
        double half = 0.5 * longest.length();
        double u = along(longest, x, y) / half;
        // The third mark moves b; both ends move the axis that it is measured from, by half of each, and a.
        double ofWidth = error * Math.sqrt(1.5) / half / Math.sqrt(1 - u * u);
        return Math.hypot(ofWidth, ratio() * longest.share(error));
    }
}
