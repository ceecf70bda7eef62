/**
 * Composition of a reacting mixture: {@link EquilibriumSolver} minimises the Gibbs energy; {@link FrozenGas} holds a
 * composition fixed.
 */
package dev.penstock.combustion.equilibrium;
