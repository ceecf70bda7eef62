package dev.penstock;

/**
 * A number with its band.
 *
 * @param low lowest value that is believed possible, in the unit of the quantity
 * @param likely most likely value, same unit
 * @param high highest value that is believed possible, same unit
 */
public record Estimate(double low, double likely, double high) {}
