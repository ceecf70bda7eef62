/**
 * Burnt gas in chemical equilibrium or frozen: species data, Gibbs minimisation, transport. In: elements and enthalpy per
 * kilogram of the reactants; out: {@link dev.penstock.combustion.GasState}. Main sources: NASA RP-1311, NASA TM-4513.
 */
package dev.penstock.combustion;
