package dev.penstock.reports.slide;

import dev.penstock.cycles.origin.PartKind;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;

/** Simple signs of main parts, in a square of 28 about the origin. */
final class Sign {

    private Sign() {}

    /**
     * @param kind kind of part
     * @param x middle (px)
     * @param y middle (px)
     * @param scale size over 28 px
     * @return outline to be drawn
     */
    static Shape of(PartKind kind, double x, double y, double scale) {
        AffineTransform place = new AffineTransform(scale, 0, 0, scale, x, y);
        return place.createTransformedShape(
                switch (kind) {
                    case TANK -> new RoundRectangle2D.Double(-9, -13, 18, 26, 16, 14);
                    case PUMP -> both(new Ellipse2D.Double(-12, -12, 24, 24), -10.4, -6, 0, 12, 10.4, -6);
                    case MOTOR -> both(new Ellipse2D.Double(-12, -12, 24, 24), -5, 5, -5, -5, 0, 2, 5, -5, 5, 5);
                    case BATTERY ->
                        both(
                                lines(true, -12, -8, 12, -8, 12, 9, -12, 9),
                                -8,
                                -8,
                                -8,
                                -11,
                                -4,
                                -11,
                                -4,
                                -8,
                                4,
                                -8,
                                4,
                                -11,
                                8,
                                -11,
                                8,
                                -8);
                    case TURBINE -> lines(true, -4, -12, 4, -12, 12, 12, -12, 12);
                    case JACKET -> lines(false, -11, 11, -11, -11, -4, -11, -4, 8, 4, 8, 4, -11, 11, -11, 11, 11);
                    case GAS_GENERATOR, PREBURNER -> lines(true, -9, -12, 9, -12, 9, 4, 5, 12, -5, 12, -9, 4);
                    case BOTTLE -> both(new Ellipse2D.Double(-11, -9, 22, 22), 0, -9, 0, -13, -4, -13, 4, -13);
                    case REGULATOR ->
                        both(lines(true, -8, -1, 8, -1, -8, 12, 8, 12), 0, 5.5, 0, -6, -7, -6, 0, -12, 7, -6, 0, -6);
                    case HEATER ->
                        both(
                                lines(true, -11, -11, 11, -11, 11, 11, -11, 11),
                                -11,
                                0,
                                -8,
                                0,
                                -5,
                                -6,
                                0,
                                6,
                                5,
                                -6,
                                8,
                                0,
                                11,
                                0);
                    case EXHAUST -> both(lines(false, 0, -12, 0, 10), -8, 2, 0, 11, 8, 2);
                    default -> bell();
                });
    }

    private static Shape bell() {
        Path2D path = new Path2D.Double();
        path.moveTo(-8, -13);
        path.lineTo(8, -13);
        path.lineTo(8, -2);
        path.quadTo(8, 2, 3.5, 4);
        path.quadTo(10, 7, 12, 13);
        path.lineTo(-12, 13);
        path.quadTo(-10, 7, -3.5, 4);
        path.quadTo(-8, 2, -8, -2);
        path.closePath();
        return path;
    }

    private static Shape both(Shape first, double... points) {
        Path2D path = new Path2D.Double(first);
        path.append(lines(false, points), false);
        return path;
    }

    private static Path2D lines(boolean closed, double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }
}
