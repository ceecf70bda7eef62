package dev.penstock.cycles.sheet;

import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.errors.Require;
import java.util.List;

/**
 * One part of an engine and the stations it joins: together the components are the flow diagram, and what the energy
 * audit adds up.
 *
 * @param key which part it is
 * @param inlets numbers of the stations that flow in
 * @param outlets numbers of the stations that flow out
 * @param heatIn heat flow into the medium (W); negative when the medium gives heat
 * @param workIn shaft or electric power into the medium (W); negative for a turbine
 */
public record Component(PartKey key, List<Integer> inlets, List<Integer> outlets, double heatIn, double workIn) {

    public Component {
        Require.finite(key.id(), "heat flow (W)", heatIn);
        Require.finite(key.id(), "power (W)", workIn);
        inlets = List.copyOf(inlets);
        outlets = List.copyOf(outlets);
    }

    /** What it is. */
    public PartKind kind() {
        return key.kind();
    }

    /** Stable dotted id, for example "pump.fuel". */
    public String id() {
        return key.id();
    }

    /** Name for people. */
    public String label() {
        return key.label();
    }
}
