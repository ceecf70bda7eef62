package dev.penstock.vehicle.ascent;

/**
 * How a stage flies where it parts.
 *
 * @param altitude height (m)
 * @param up speed upwards (m/s)
 * @param along speed along the ground, through the air (m/s)
 * @param downrange distance along the ground from the pad (m)
 */
public record Parting(double altitude, double up, double along, double downrange) {}
