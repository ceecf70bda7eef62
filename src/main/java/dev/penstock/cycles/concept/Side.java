package dev.penstock.cycles.concept;

import java.util.Locale;

/** One of the two propellants. */
public enum Side {
    OXIDIZER,
    FUEL;

    /** @return name in files and ids */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @return the other propellant */
    public Side other() {
        return this == OXIDIZER ? FUEL : OXIDIZER;
    }
}
