/**
 * Wall temperatures, coolant temperature rise and pressure drop of a jacket: {@link JacketSolver} gives a {@link
 * JacketResult} with its limits and warnings.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling.jacket;
