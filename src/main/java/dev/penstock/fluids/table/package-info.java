/**
 * States from tables for the inner loops: {@link FluidTables} builds them, {@link FluidTableCursor} reads them.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids.table;
