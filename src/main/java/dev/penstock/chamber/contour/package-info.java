/**
 * Shape of chamber and nozzle, and the two-dimensional flow in it: {@link ContourBuilder}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.chamber.contour;
