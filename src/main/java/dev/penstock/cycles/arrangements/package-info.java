/**
 * The engine cycles. A {@link Cycle} states its arrangement, its unknowns and the equations that close them; a new
 * cycle is one new file.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.arrangements;
