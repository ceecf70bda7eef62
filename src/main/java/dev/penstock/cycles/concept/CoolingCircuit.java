package dev.penstock.cycles.concept;

import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.errors.Require;

/**
 * One circuit of regenerative cooling: a propellant through a jacket on its part of the wall.
 *
 * @param coolant which propellant cools
 * @param flowFraction share of that propellant's flow to this jacket that goes through it (-)
 * @param jacket the jacket
 * @param heatFluxFactor factor on the gas-side heat transfer coefficient (-)
 */
public record CoolingCircuit(Side coolant, double flowFraction, JacketDesign jacket, double heatFluxFactor) {

    public CoolingCircuit {
        Require.within("cooling", "flow fraction (-)", flowFraction, 0.01, 1);
        Require.positive("cooling", "heat flux factor (-)", heatFluxFactor);
    }

    /** @return which of the engine's circuits it is */
    public CircuitKey key() {
        return jacket.circuit();
    }
}
