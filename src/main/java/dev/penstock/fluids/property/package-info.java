/**
 * Properties as functions of temperature, and transport models beside an equation of state.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids.property;
