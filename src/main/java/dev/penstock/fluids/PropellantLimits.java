package dev.penstock.fluids;

import java.util.OptionalDouble;

/**
 * Temperatures that bound the use of a propellant. Each is empty where it does not apply.
 *
 * @param freezing freezing point at 1 atm (K)
 * @param boiling boiling point at 1 atm (K)
 * @param decomposition bulk temperature above which it decomposes (K)
 * @param coking coolant-side wall temperature above which it lays down deposits (K)
 */
public record PropellantLimits(
        OptionalDouble freezing, OptionalDouble boiling, OptionalDouble decomposition, OptionalDouble coking) {}
