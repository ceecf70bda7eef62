/**
 * Fluids that are known by published correlations only: a Tait liquid with properties over temperature, see {@link
 * CorrelationFluid}.
 */
package dev.penstock.fluids.correlation;
