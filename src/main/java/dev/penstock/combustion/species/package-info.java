/**
 * What gas species are there and what are their properties? {@link SpeciesLibrary} reads the data of {@code
 * fluids/gas}.
 */
package dev.penstock.combustion.species;
