package dev.penstock.cycles.concept;

/** A place where turbine gas is made. */
public enum Burner {
    /** Small burner beside the chamber whose gas is dumped. */
    GENERATOR("gas_generator", "gas generator"),
    /** Burner of all or most of the fuel with a little oxidizer. */
    FUEL_RICH("preburner.fuel_rich", "fuel-rich preburner"),
    /** Burner of all or most of the oxidizer with a little fuel. */
    OXIDIZER_RICH("preburner.oxidizer_rich", "oxidizer-rich preburner"),
    /** The chamber itself: fuel-rich gas taken from beside the injector face. */
    TAP_OFF("tap_off", "chamber tap"),
    /** Bed or chamber in which a monopropellant decomposes. */
    DECOMPOSITION("decomposition", "decomposition chamber");

    private final String key;
    private final String title;

    Burner(String key, String title) {
        this.key = key;
        this.title = title;
    }

    /** @return dotted key of its table in a concept file */
    public String key() {
        return key;
    }

    /** @return name for people */
    public String title() {
        return title;
    }
}
