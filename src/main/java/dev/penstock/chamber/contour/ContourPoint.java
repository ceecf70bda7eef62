package dev.penstock.chamber.contour;

import dev.penstock.errors.Require;

/**
 * A point of the inner wall.
 *
 * @param x distance from the throat along the axis (m), negative upstream
 * @param radius distance from the axis (m)
 */
public record ContourPoint(double x, double radius) {

    public ContourPoint {
        Require.finite("contour", "x (m)", x);
        Require.positive("contour", "radius (m)", radius);
    }
}
