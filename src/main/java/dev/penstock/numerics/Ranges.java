package dev.penstock.numerics;

/** Variables as shares of their ranges and back, so that a step means the same for all of them. Not to be changed once handed over. */
public final class Ranges {

    private final double[] low;
    private final double[] high;

    /**
     * @param low lower bounds
     * @param high upper bounds, each above the lower one
     */
    public Ranges(double[] low, double[] high) {
        this.low = low.clone();
        this.high = high.clone();
    }

    /**
     * @param x variables
     * @return their shares of the ranges (-), 0 or 1 for what lies outside
     */
    public double[] shares(double[] x) {
        double[] shares = new double[x.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.min(1, Math.max(0, (x[i] - low[i]) / (high[i] - low[i])));
        }
        return shares;
    }

    /**
     * @param shares shares of the ranges (-)
     * @return the variables
     */
    public double[] values(double[] shares) {
        double[] x = new double[shares.length];
        values(shares, x);
        return x;
    }

    /** The same into an array that is there. */
    void values(double[] shares, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] = low[i] + shares[i] * (high[i] - low[i]);
        }
    }
}
