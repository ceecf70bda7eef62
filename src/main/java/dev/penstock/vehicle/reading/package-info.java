/**
 * Reads vehicle files: {@link VehicleReader}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle.reading;
