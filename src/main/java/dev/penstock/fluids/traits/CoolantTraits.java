package dev.penstock.fluids.traits;

import java.util.Optional;

/**
 * What a cooling jacket must know of a coolant, from the table {@code [cooling]} of its file. The names are those that a
 * concept's {@code cooling.correlation} takes.
 *
 * @param correlation name of the heat-transfer correlation to take; there for coolants
 * @param supercriticalCorrelation name of the one to take where the coolant enters above its critical pressure
 */
public record CoolantTraits(Optional<String> correlation, Optional<String> supercriticalCorrelation) {

    /** Nothing known, as of a fluid that cools nothing. */
    public static final CoolantTraits NONE = new CoolantTraits(Optional.empty(), Optional.empty());
}
