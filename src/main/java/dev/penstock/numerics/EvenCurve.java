package dev.penstock.numerics;

/** A function of one variable on evenly spaced nodes, read by the cubic through the nearest four. Immutable. */
public final class EvenCurve {

    private final double low;
    private final double step;
    private final double[] values;

    /**
     * @param low first node
     * @param high last node
     * @param values values at the nodes, at least four
     */
    public EvenCurve(double low, double high, double[] values) {
        this.low = low;
        this.step = (high - low) / (values.length - 1);
        this.values = values;
    }

    /** @return values at the nodes */
    public double[] nodes() {
        return values;
    }

    /**
     * @param x place; beyond the ends the last cubic is carried on
     * @return value there
     */
    public double at(double x) {
        double place = (x - low) / step;
        int i = (int) Math.max(0, Math.min(place - 1, values.length - 4.0));
        double t = place - i;
        double t1 = t - 1;
        double t2 = t - 2;
        double t3 = t - 3;
        return (t * t1 * (t2 * values[i + 3] - 3 * t3 * values[i + 2])
                        + t2 * t3 * (3 * t * values[i + 1] - t1 * values[i]))
                / 6;
    }
}
