package dev.penstock.vehicle.ascent;

import java.util.List;

/**
 * What a flight of a search tells.
 *
 * @param margin delta-v left in the stages on reaching the orbit (m/s), below zero for what is missing
 * @param stagingPressure largest dynamic pressure where stages part (Pa)
 * @param overload time integral of the square of what dynamic pressure exceeds its limit by, over the limit (s)
 * @param heating the larger free-molecular heat flux of those at insertion and at the end (W/m²)
 * @param partings where each part of the flight that burnt out was dropped, lowest first
 * @param aim the angles that end it in its orbit
 */
public record Arrival(
        double margin, double stagingPressure, double overload, double heating, List<Parting> partings, Aim aim) {

    public Arrival {
        partings = List.copyOf(partings);
    }

    /**
     * Angles of the linear-tangent law above the horizon.
     *
     * @param start where it begins (rad)
     * @param end when everything would be burnt at full flow (rad)
     */
    public record Aim(double start, double end) {}
}
