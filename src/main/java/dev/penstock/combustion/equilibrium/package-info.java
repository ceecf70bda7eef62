/**
 * Composition of a reacting mixture: {@link EquilibriumSolver} minimises the Gibbs energy; {@link FrozenGas} holds a
 * composition fixed.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.combustion.equilibrium;
