package dev.penstock.cycles.concept;

import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.errors.Require;

/**
 * Regenerative cooling of a concept.
 *
 * @param coolant which propellant cools
 * @param flowFraction share of that propellant's chamber flow that goes through the jacket (-)
 * @param jacket the jacket
 * @param heatFluxFactor factor on the gas-side heat transfer coefficient (-)
 */
public record CoolingDesign(Side coolant, double flowFraction, JacketDesign jacket, double heatFluxFactor) {

    public CoolingDesign {
        Require.within("cooling", "flow fraction (-)", flowFraction, 0.01, 1);
        Require.positive("cooling", "heat flux factor (-)", heatFluxFactor);
    }
}
