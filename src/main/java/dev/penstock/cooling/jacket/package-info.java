/**
 * Wall temperatures, coolant temperature rise and pressure drop of a jacket: {@link JacketSolver} gives a {@link
 * JacketResult} with its limits and warnings.
 */
package dev.penstock.cooling.jacket;
