package dev.penstock.reports.slide;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * Where a place of a vehicle is drawn.
 *
 * @param upright whether it stands
 * @param scale length of a metre (px)
 * @param origin place of the lowest nozzle exit along the axis (px)
 * @param axis place of the axis across it (px)
 */
record VehicleFrame(boolean upright, double scale, double origin, double axis) {

    double along(double z) {
        return upright ? origin - scale * z : origin + scale * z;
    }

    double across(double r) {
        return axis + scale * r;
    }

    /** A point a length above the lowest nozzle exit and a length beside the axis (m). */
    Point2D at(double z, double r) {
        return upright ? new Point2D.Double(across(r), along(z)) : new Point2D.Double(along(z), across(r));
    }

    /** A rectangle between two places along the axis and two across it. */
    Rectangle2D box(double z1, double z2, double r1, double r2) {
        Point2D first = at(z1, r1);
        Rectangle2D box = new Rectangle2D.Double(first.getX(), first.getY(), 0, 0);
        box.add(at(z2, r2));
        return box;
    }
}
