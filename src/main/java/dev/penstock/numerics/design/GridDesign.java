package dev.penstock.numerics.design;

import java.util.List;

/** Every combination of values on each axis; the last axis moves fastest. */
public final class GridDesign implements UnitDesign {

    /**
     * One axis.
     *
     * @param count number of values, 1 or more
     * @param ends whether the first and last value lie on the ends of the axis; otherwise each lies in the middle of its share
     */
    public record Axis(int count, boolean ends) {

        double at(int index) {
            return ends && count > 1 ? index / (count - 1.0) : (index + 0.5) / count;
        }
    }

    private final List<Axis> axes;
    private final int size;

    /**
     * @param axes axes, whose combinations are no more than {@link UnitDesign#MOST_POINTS}
     */
    public GridDesign(List<Axis> axes) {
        this.axes = List.copyOf(axes);
        long product = 1;
        for (Axis axis : axes) {
            product = Math.min(product * axis.count(), Integer.MAX_VALUE);
        }
        if (product < 1 || product > MOST_POINTS) {
            throw new IllegalArgumentException("a grid of " + axes);
        }
        this.size = (int) product;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public int dimensions() {
        return axes.size();
    }

    @Override
    public void point(int index, double[] point) {
        int rest = index;
        for (int d = axes.size() - 1; d >= 0; d--) {
            Axis axis = axes.get(d);
            point[d] = axis.at(rest % axis.count());
            rest /= axis.count();
        }
    }
}
