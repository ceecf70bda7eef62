/**
 * Start of a turbopump: energy to a stated speed, gas that delivers it, bottle that holds the gas. In: a shaft and its turbine as
 * sized; out: {@link dev.penstock.turbomachinery.start.StartGas}. Entry class:
 * {@link dev.penstock.turbomachinery.start.BottleStart}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.start;
