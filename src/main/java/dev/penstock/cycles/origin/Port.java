package dev.penstock.cycles.origin;

/** A way out of a part, by which a station is named. */
public enum Port {
    OUTLET("%s outlet"),
    BEHIND("behind the %s"),
    DISCHARGE("%s discharge"),
    EXIT("%s exit"),
    FIRST_BRANCH("%s"),
    SECOND_BRANCH("%2$s"),
    NOZZLE_ENTRANCE("%s, nozzle entrance");

    private final String pattern;

    Port(String pattern) {
        this.pattern = pattern;
    }

    String of(PartKey part) {
        return String.format(java.util.Locale.ROOT, pattern, part.noun(), part.rest());
    }
}
