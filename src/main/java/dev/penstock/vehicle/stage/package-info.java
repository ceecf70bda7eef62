/**
 * Mass of a stage as a function of what it carries, and the best split of a vehicle into stages.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle.stage;
