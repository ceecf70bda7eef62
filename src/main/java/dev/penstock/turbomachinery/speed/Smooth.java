package dev.penstock.turbomachinery.speed;

/**
 * Minimum and maximum without a corner, so that a gradient-based solver may cross from one governing limit to another. Both
 * are power means of order 24: where two arguments are equal the result is 2.9 % inside the tighter one; where they differ by
 * a fifth it is within 0.1 %.
 */
public final class Smooth {

    private static final double ORDER = 24;

    private Smooth() {}

    /**
     * @param values positive values
     * @return a value at or just below the smallest
     */
    public static double least(double... values) {
        double smallest = Double.POSITIVE_INFINITY;
        for (double value : values) {
            smallest = Math.min(smallest, value);
        }
        double sum = 0;
        for (double value : values) {
            sum += Math.pow(smallest / value, ORDER);
        }
        return smallest * Math.pow(sum, -1 / ORDER);
    }

    /**
     * @param a positive value
     * @param b positive value
     * @return a value at or just above the larger
     */
    public static double greatest(double a, double b) {
        return 1 / least(1 / a, 1 / b);
    }
}
