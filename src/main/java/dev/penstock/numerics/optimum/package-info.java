/**
 * The best places of the unit cube: one objective by many starts, two or three by their frontier, both under constraints.
 * Knows nothing of engines.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.numerics.optimum;
