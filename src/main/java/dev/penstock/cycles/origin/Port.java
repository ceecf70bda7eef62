package dev.penstock.cycles.origin;

/** A way out of a part, by which a station is named. */
public enum Port {
    OUTLET("%s outlet"),
    BEHIND("behind the %s"),
    DISCHARGE("%s discharge"),
    EXIT("%s exit"),
    FIRST_BRANCH("%s"),
    SECOND_BRANCH("rest, after %s is taken off"),
    NOZZLE_ENTRANCE("%s, nozzle entrance");

    private final String pattern;

    Port(String pattern) {
        this.pattern = pattern;
    }

    String of(String noun) {
        return String.format(java.util.Locale.ROOT, pattern, noun);
    }
}
