package dev.penstock.cycles.concept;

import java.util.Locale;

/** One of the two propellants. */
public enum Side {
    OXIDIZER,
    FUEL;

    private final String key = name().toLowerCase(Locale.ROOT);

    /** @return name in files and ids */
    public String key() {
        return key;
    }

    /** @return the other propellant */
    public Side other() {
        return this == OXIDIZER ? FUEL : OXIDIZER;
    }
}
