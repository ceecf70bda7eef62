/**
 * What models must know of a propellant beside its states, as its file says it: combustion, cooling, tanks, metals.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids.traits;
