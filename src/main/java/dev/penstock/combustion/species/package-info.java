/**
 * What gas species are there and what are their properties? {@link SpeciesLibrary} reads the data of {@code
 * fluids/gas}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.combustion.species;
