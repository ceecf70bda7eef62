package dev.penstock.cycles.origin;

import java.util.Locale;

/** What a part of an arrangement is. */
public enum PartKind {
    TANK,
    PUMP,
    LINE,
    VALVE,
    ORIFICE,
    SPLIT,
    MERGE,
    JACKET,
    GAS_GENERATOR,
    PREBURNER,
    TURBINE,
    INJECTOR,
    CHAMBER,
    NOZZLE,
    EXHAUST,
    MOTOR,
    BATTERY,
    BOTTLE,
    REGULATOR,
    HEATER;

    private final String prefix = name().toLowerCase(Locale.ROOT);

    /** First part of the ids of most of its kind. */
    String prefix() {
        return prefix;
    }
}
