/** States from tables for the inner loops: {@link FluidTables} builds them, {@link FluidTableCursor} reads them. */
package dev.penstock.fluids.table;
