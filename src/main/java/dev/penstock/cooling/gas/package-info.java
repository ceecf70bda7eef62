/**
 * Heat transfer from the gas to the wall: {@link GasSide} and its models, radiation, soot and film.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling.gas;
