/**
 * The march of the coolant through the jacket, cell by cell: {@link JacketRun}. Internal to {@code cooling}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling.march;
