/**
 * Dry mass of a stage: a {@link dev.penstock.vehicle.mass.DryMassModel} answers with a
 * {@link dev.penstock.vehicle.mass.MassTable} in which every line has its source and scatter.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle.mass;
