/**
 * States from tables for the inner loops: {@link FluidTables} keeps one for each fluid, {@link TableBuilder} makes it,
 * {@link FluidTableCursor} reads it.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids.table;
