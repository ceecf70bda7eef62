/**
 * Burnt gas: what a mixture of propellants becomes and how it then behaves. In: elements and enthalpy per kilogram
 * ({@link dev.penstock.combustion.equilibrium.Reactants}); out: {@link dev.penstock.combustion.gas.GasState} for chambers and nozzles,
 * {@link dev.penstock.combustion.TurbineGas} for turbines.
 *
 * <p>Start at {@link dev.penstock.combustion.equilibrium.EquilibriumSolver} (shifting composition),
 * {@link dev.penstock.combustion.equilibrium.FrozenGas} (fixed composition) and
 * {@link dev.penstock.combustion.GasGeneratorGas} (fuel-rich and oxidizer-rich gas, measured where equilibrium fails).
 * Species come from {@code fluids/gas} through {@link dev.penstock.combustion.species.SpeciesLibrary}. Main sources: NASA RP-1311
 * (method), NASA TM-4513 (species), kinetic theory of gases (transport). Theory: docs/theory/combustion.md.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.combustion;
