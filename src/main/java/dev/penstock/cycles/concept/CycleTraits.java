package dev.penstock.cycles.concept;

import dev.penstock.input.Belief;
import java.util.List;

/**
 * What a reader, a template or a table of cycles must know of a cycle without solving it.
 *
 * @param pressures chamber pressures that nine of ten such engines have
 * @param closure what is left to the balance
 * @param burners burners it has
 * @param arrangements couplings of pumps and turbines that it allows, the usual one first; empty without pumps
 * @param dumps whether turbine gas is dumped through a nozzle of its own
 * @param gasInjector whether gas enters the chamber through an injector of its own
 * @param heatedShare share of the fuel that the jacket heats unless the concept says otherwise (-); zero where the cycle
 *     does not live on that heat
 * @param heated propellants that take up heat in jackets and drive turbines with it
 */
public record CycleTraits(
        Belief pressures,
        Closure closure,
        List<Burner> burners,
        List<ShaftDesign.Arrangement> arrangements,
        boolean dumps,
        boolean gasInjector,
        double heatedShare,
        List<Side> heated) {

    /** What the balance finds, besides the pump discharge pressures. */
    public enum Closure {
        /** Tank pressures. */
        TANK_PRESSURE,
        /** Gas flow, at the turbine pressure ratio of the concept. */
        GAS_FLOW,
        /** Turbine pressure ratio at the gas temperature of the concept, or the reverse. */
        RATIO_OR_TEMPERATURE,
        /** Turbine pressure ratio at the temperature that the jacket gives. */
        RATIO,
        /** Motor power. */
        MOTOR_POWER
    }

    /** Couplings that leave the choice to the concept. */
    public static final List<ShaftDesign.Arrangement> ANY =
            List.of(ShaftDesign.Arrangement.SINGLE, ShaftDesign.Arrangement.DUAL, ShaftDesign.Arrangement.GEARED);

    public CycleTraits {
        burners = List.copyOf(burners);
        arrangements = List.copyOf(arrangements);
        heated = List.copyOf(heated);
    }

    /** A cycle whose fuel alone takes up heat for turbines, if any does. */
    public CycleTraits(
            Belief pressures,
            Closure closure,
            List<Burner> burners,
            List<ShaftDesign.Arrangement> arrangements,
            boolean dumps,
            boolean gasInjector,
            double heatedShare) {
        this(
                pressures,
                closure,
                burners,
                arrangements,
                dumps,
                gasInjector,
                heatedShare,
                heatedShare > 0 ? List.of(Side.FUEL) : List.of());
    }

    /** @return whether it has pumps */
    public boolean pumped() {
        return !arrangements.isEmpty();
    }

    /** @return whether turbines drive its pumps */
    public boolean turbines() {
        return pumped() && closure != Closure.MOTOR_POWER;
    }

    /** @return whether a small pump behind a main pump raises what one preburner burns of the lean propellant */
    public boolean kickPumps() {
        return burners.size() == 1 && closure == Closure.RATIO_OR_TEMPERATURE;
    }

    /** @return whether it lives on the heat of the jacket */
    public boolean livesOnJacketHeat() {
        return !heated.isEmpty();
    }

    /** @return whether each of two turbines has gas of its own: from two burners, or from two heated propellants */
    public boolean ownGas() {
        return burners.size() > 1 || heated.size() > 1;
    }
}
