package dev.penstock.fluids;

import java.util.OptionalDouble;

/**
 * Temperatures that bound the use of a propellant. Each is empty where it does not apply.
 *
 * @param freezing freezing point at 1 atm (K)
 * @param boiling boiling point at 1 atm (K)
 * @param decomposition bulk temperature above which it decomposes (K)
 * @param coking coolant-side wall temperature above which it lays down deposits (K)
 * @param cokingHighest the same for refined fuel at high velocity, where that is higher (K)
 */
public record PropellantLimits(
        OptionalDouble freezing,
        OptionalDouble boiling,
        OptionalDouble decomposition,
        OptionalDouble coking,
        OptionalDouble cokingHighest) {

    /**
     * @param share share of the way from where deposits set in to the hottest that is known to serve (-)
     * @return coolant-side wall temperature allowed (K); empty for what lays nothing down
     */
    public OptionalDouble coking(double share) {
        return coking.isEmpty() || cokingHighest.isEmpty()
                ? coking
                : OptionalDouble.of(
                        coking.getAsDouble() + share * (cokingHighest.getAsDouble() - coking.getAsDouble()));
    }
}
