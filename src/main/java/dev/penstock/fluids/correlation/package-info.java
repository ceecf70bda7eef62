/**
 * Fluids that are known by published correlations only: a Tait liquid with properties over temperature, see {@link
 * CorrelationFluid}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids.correlation;
