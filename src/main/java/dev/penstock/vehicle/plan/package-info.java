/**
 * What a vehicle is asked to be: {@link VehiclePlan} of stages, boosters and mission.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle.plan;
