/**
 * What was worked out of a fluid at length, kept in files between runs: {@link dev.penstock.fluids.store.FluidStore}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids.store;
