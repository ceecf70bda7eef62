package dev.penstock.cycles.concept;

import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.design.DumpDesign;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.errors.Require;
import java.util.Optional;

/**
 * One cooling circuit: a propellant through a jacket on its part of the wall, from where it goes on to be burnt or is dumped.
 *
 * @param coolant which propellant cools
 * @param flowFraction share of that propellant's flow to this jacket that goes through it (-); of the whole flow of that propellant
 *     where it is dumped
 * @param jacket the jacket
 * @param heatFluxFactor factor on the gas-side heat transfer coefficient (-)
 * @param dump how the coolant leaves that is dumped behind the jacket; empty where it goes on
 */
public record CoolingCircuit(
        Side coolant, double flowFraction, JacketDesign jacket, double heatFluxFactor, Optional<DumpDesign> dump) {

    public CoolingCircuit {
        Require.within("cooling", "flow fraction (-)", flowFraction, 0.01, 1);
        Require.positive("cooling", "heat flux factor (-)", heatFluxFactor);
    }

    /** @return whether its coolant goes on to be burnt, whatever it does before */
    public boolean returns() {
        return dump.isEmpty();
    }

    /** @return which of the engine's circuits it is */
    public CircuitKey key() {
        return jacket.circuit();
    }
}
