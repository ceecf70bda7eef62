/**
 * What a vehicle needs to know of its engine: thrust and flow at any ambient pressure, mass, and what is in the tanks.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle.engine;
