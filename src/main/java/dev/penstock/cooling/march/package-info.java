/** The march of the coolant through the jacket, cell by cell: {@link JacketRun}. Internal to {@code cooling}. */
package dev.penstock.cooling.march;
