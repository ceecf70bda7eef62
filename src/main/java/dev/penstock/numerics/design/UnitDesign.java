package dev.penstock.numerics.design;

/**
 * Points of the unit cube, each found by its number: the same number always gives the same point. Implementations may keep
 * scratch arrays; one belongs to one thread.
 */
public interface UnitDesign {

    /** More than a design is asked for: ten million concepts take a workstation more than a day. */
    int MOST_POINTS = 10_000_000;

    /** @return number of points */
    int size();

    /** @return number of coordinates */
    int dimensions();

    /**
     * @param index number of the point, 0 to {@code size() - 1}
     * @param point takes its coordinates, each from 0 to 1
     */
    void point(int index, double[] point);
}
