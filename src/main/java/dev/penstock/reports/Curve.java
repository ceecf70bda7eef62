package dev.penstock.reports;

import java.util.List;

/**
 * A line of a chart.
 *
 * @param name name in the legend
 * @param ink colour
 * @param dashed whether it is drawn dashed
 * @param points points in drawing order
 */
public record Curve(String name, Ink ink, boolean dashed, List<Point> points) {

    /**
     * A point of a curve.
     *
     * @param x horizontal value, in the unit of the axis
     * @param y vertical value, in the unit of the axis; NaN for a gap
     */
    public record Point(double x, double y) {}

    public Curve {
        points = List.copyOf(points);
    }
}
