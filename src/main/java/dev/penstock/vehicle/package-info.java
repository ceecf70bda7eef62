/**
 * The vehicle that follows from an engine. {@link dev.penstock.vehicle.reading.VehicleReader} reads what is asked for into a
 * {@link dev.penstock.vehicle.plan.VehiclePlan}; {@link dev.penstock.vehicle.VehicleSizer} turns plan and engines into a
 * {@link dev.penstock.vehicle.stage.VehicleSizing}: start mass or payload, propellant, tanks and dry mass of every stage, or
 * the reason why no vehicle closes. The specific impulse is the one just computed for the engine, never a fixed figure.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle;
