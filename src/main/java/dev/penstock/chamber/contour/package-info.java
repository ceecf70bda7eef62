/** Shape of chamber and nozzle, and the two-dimensional flow in it: {@link ContourBuilder}. */
package dev.penstock.chamber.contour;
