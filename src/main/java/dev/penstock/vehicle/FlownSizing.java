package dev.penstock.vehicle;

import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.stage.VehicleSizing;

/**
 * A vehicle sized on the losses of its own flight.
 *
 * @param sizing the vehicle; its mission's losses are those of the flight
 * @param ascent the flight
 * @param rounds how often it was sized and flown
 */
public record FlownSizing(VehicleSizing sizing, AscentResult ascent, int rounds) {}
