/**
 * Which coordinates of the unit cube move a function, and by how much: screening, and shares of its variance.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.numerics.variance;
