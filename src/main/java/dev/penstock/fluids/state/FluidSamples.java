package dev.penstock.fluids.state;

import java.util.Arrays;

/**
 * Single-phase states of a fluid at many pressures and enthalpies, as a table needs them. States between the phases, and
 * those that the model does not have, are not held.
 */
public final class FluidSamples {

    /** Properties of each state, SI. */
    public enum Property {
        TEMPERATURE,
        DENSITY,
        ENTROPY,
        ISOBARIC_HEAT_CAPACITY,
        SOUND_SPEED,
        VISCOSITY,
        CONDUCTIVITY
    }

    private final double[][] values;
    private final Phase[] phases;

    /** @param count number of states; none is held yet */
    public FluidSamples(int count) {
        values = new double[Property.values().length][count];
        phases = new Phase[count];
        Arrays.fill(phases, Phase.TWO_PHASE);
    }

    /** Takes the state at which a cursor stands, unless that is between the phases. */
    public void take(int state, FluidCursor at) {
        set(Property.TEMPERATURE, state, at.temperature());
        set(Property.DENSITY, state, at.density());
        set(Property.ENTROPY, state, at.entropy());
        set(Property.ISOBARIC_HEAT_CAPACITY, state, at.isobaricHeatCapacity());
        set(Property.SOUND_SPEED, state, at.soundSpeed());
        set(Property.VISCOSITY, state, at.viscosity());
        set(Property.CONDUCTIVITY, state, at.conductivity());
        hold(state, at.phase());
    }

    /** Sets a property of a state, SI. */
    public void set(Property property, int state, double value) {
        values[property.ordinal()][state] = value;
    }

    /** Tells that all properties of a state have been set, and its phase. */
    public void hold(int state, Phase phase) {
        phases[state] = phase;
    }

    /** @return whether the state has one phase and every property */
    public boolean holds(int state) {
        return phases[state] != Phase.TWO_PHASE;
    }

    /** @return phase of a state that is held */
    public Phase phase(int state) {
        return phases[state];
    }

    /** @return a property of a state that is held, SI */
    public double value(Property property, int state) {
        return values[property.ordinal()][state];
    }
}
