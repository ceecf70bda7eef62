/**
 * Flight: {@link dev.penstock.vehicle.ascent.AscentOptimizer} flies a vehicle from the ground to an orbit with the
 * steering that leaves most mass, and answers with the losses by name; {@link dev.penstock.vehicle.ascent.Entry}
 * estimates what a returning stage meets. Two dimensions, a round rotating earth, the standard atmosphere.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle.ascent;
