package dev.penstock.numerics.variance;

/** Several functions of the unit cube, asked together. Safe to ask from several threads. */
@FunctionalInterface
public interface Sampled {

    /**
     * @param place coordinates in the unit cube
     * @return value of each function there; NaN where it has none
     */
    double[] at(double[] place);
}
