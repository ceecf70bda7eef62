/** Reads vehicle files: {@link VehicleReader}. */
package dev.penstock.vehicle.reading;
