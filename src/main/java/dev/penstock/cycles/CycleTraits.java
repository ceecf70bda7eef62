package dev.penstock.cycles;

import java.util.List;

/**
 * What a reader, a template or a table of cycles must know of a cycle without solving it.
 *
 * @param closure what is left to the balance
 * @param burners burners it has
 * @param arrangements couplings of pumps and turbines that it allows, the usual one first; empty without pumps
 * @param dumps whether turbine gas is dumped through a nozzle of its own
 */
public record CycleTraits(
        Closure closure, List<Burner> burners, List<ShaftDesign.Arrangement> arrangements, boolean dumps) {

    /** What the balance finds, besides the pump discharge pressures. */
    public enum Closure {
        /** Tank pressures. */
        TANK_PRESSURE,
        /** Gas flow, at the gas temperature and turbine pressure ratio of the concept. */
        GAS_FLOW,
        /** Turbine pressure ratio at the gas temperature of the concept, or the reverse. */
        RATIO_OR_TEMPERATURE
    }

    public CycleTraits {
        burners = List.copyOf(burners);
        arrangements = List.copyOf(arrangements);
    }

    /** @return whether it has pumps */
    public boolean pumped() {
        return !arrangements.isEmpty();
    }
}
