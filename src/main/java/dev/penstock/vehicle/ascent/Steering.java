package dev.penstock.vehicle.ascent;

/**
 * What is free in the steering of a flight, beside the two angles that make it end in its orbit.
 *
 * @param tilt tilt after release (rad)
 * @param freeAbove height from which the thrust need not point along the path (m)
 */
public record Steering(double tilt, double freeAbove) {

    /** Height (m) from which a flight steers freely where nothing better is known. */
    public static final double USUAL_FREE_ABOVE = 40e3;

    /** Lowest and highest height (m) tried for that. */
    public static final double LEAST_FREE_ABOVE = 6e3;

    /** See above. */
    public static final double MOST_FREE_ABOVE = 65e3;

    /** Least tilt (rad) tried. */
    public static final double LEAST_TILT = Math.toRadians(0.15);

    /** Largest tilt (rad) tried. */
    public static final double MOST_TILT = Math.toRadians(25);
}
