package dev.penstock.fluids.table;

import dev.penstock.fluids.state.FluidSamples.Property;

/** How far a table may miss the model behind it, relative to the property's value. */
final class TableError {

    /** Entropy may pass through zero: its error is relative to this, or to its value where that is larger (J/(kg·K)). */
    static final double ENTROPY_SCALE = 1000;

    /** Highest terms of a rough patch that are still kept, relative to the property's size (-). */
    static final double FOLLOWED = 0.03;

    private TableError() {}

    /** What cutting aims at: the highest terms of the polynomials, which are some ten times larger than their error. */
    static double aim(Property property) {
        return switch (property) {
            case TEMPERATURE, DENSITY, ENTROPY -> 3e-6;
            case SOUND_SPEED -> 3e-5;
            case ISOBARIC_HEAT_CAPACITY, VISCOSITY, CONDUCTIVITY -> 3e-4;
        };
    }

    /** What a good patch may have where cutting ends: near the critical point, and where a published correlation has a jump. */
    static double most(Property property) {
        return switch (property) {
            case TEMPERATURE, DENSITY, ENTROPY -> 1e-5;
            case SOUND_SPEED, ISOBARIC_HEAT_CAPACITY -> 1e-3;
            case VISCOSITY -> 2e-3;
            case CONDUCTIVITY -> 5e-3;
        };
    }
}
