package dev.penstock.cycles.sheet;

import dev.penstock.errors.Require;
import java.util.List;

/**
 * One part of an engine and the stations it joins: together the components are the flow diagram, and what the energy
 * audit adds up.
 *
 * @param id stable dotted id, for example "pump.fuel"
 * @param kind what it is
 * @param label name for people
 * @param inlets numbers of the stations that flow in
 * @param outlets numbers of the stations that flow out
 * @param heatIn heat flow into the medium (W); negative when the medium gives heat
 * @param workIn shaft or electric power into the medium (W); negative for a turbine
 */
public record Component(
        String id, Kind kind, String label, List<Integer> inlets, List<Integer> outlets, double heatIn, double workIn) {

    /** What a component is. */
    public enum Kind {
        TANK,
        PRESSURANT,
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
        MOTOR
    }

    public Component {
        Require.finite(id, "heat flow (W)", heatIn);
        Require.finite(id, "power (W)", workIn);
        inlets = List.copyOf(inlets);
        outlets = List.copyOf(outlets);
    }
}
