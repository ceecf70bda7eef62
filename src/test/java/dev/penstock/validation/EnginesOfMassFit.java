package dev.penstock.validation;

import java.util.List;

/** The built engines whose masses the corrected estimate is fitted to. */
public final class EnginesOfMassFit {

    /** Their names in the table of built engines. */
    public static final List<String> NAMES = List.of(
            "F-1", "J-2", "RL10A-3-3A", "LE-7", "RD-170", "RD-180", "Vulcain 1", "Viking 4B", "LE-5A", "Viking 5C");

    private EnginesOfMassFit() {}
}
