package dev.penstock.vehicle.ascent;

/**
 * Where a fairing goes overboard.
 *
 * @param time time since release (s)
 * @param altitude height (m)
 * @param heating free-molecular heat flux there (W/m²)
 * @param segment part of the flight
 * @param idealDeltaV ideal delta-v of its stage up to there (m/s)
 */
public record FairingDrop(double time, double altitude, double heating, int segment, double idealDeltaV) {}
