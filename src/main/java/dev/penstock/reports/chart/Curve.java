package dev.penstock.reports.chart;

import java.util.List;

/**
 * A line of a chart.
 *
 * @param name name in the legend; empty text for a line that stands in the legend already
 * @param ink colour
 * @param dashed whether it is drawn dashed
 * @param marks whether its points are marked
 * @param before whether it shows what was before a change: thin, dotted, not in the legend
 * @param points points in drawing order
 */
public record Curve(String name, Ink ink, boolean dashed, boolean marks, boolean before, List<Point> points) {

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

    /**
     * A line without marks.
     *
     * @param name name in the legend
     * @param ink colour
     * @param dashed whether it is drawn dashed
     * @param points points in drawing order
     */
    public Curve(String name, Ink ink, boolean dashed, List<Point> points) {
        this(name, ink, dashed, false, false, points);
    }

    /** @return this line with its points marked */
    public Curve marked() {
        return new Curve(name, ink, dashed, true, before, points);
    }

    /** @return this line without an entry in the legend */
    public Curve unnamed() {
        return new Curve("", ink, dashed, marks, before, points);
    }

    /** @return this line as what was before a change */
    public Curve asBefore() {
        return new Curve(name + ", before", ink, dashed, marks, true, points);
    }
}
