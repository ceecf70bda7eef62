package dev.penstock.chamber.design;

import dev.penstock.errors.Require;

/**
 * Outer row of an injector that burns at another mixture ratio than the rest, so that the gas along the wall is cooler.
 *
 * @param flowFraction share of the chamber's flow that the row injects (-)
 * @param mixtureRatioBias mixture ratio of the row over that of the whole chamber (-); below 1 for a fuel-rich wall
 */
public record OuterZone(double flowFraction, double mixtureRatioBias) {

    public OuterZone {
        Require.within("outer zone", "share of the flow (-)", flowFraction, 0.001, 0.6);
        Require.within("outer zone", "mixture ratio over that of the chamber (-)", mixtureRatioBias, 0.01, 20);
    }
}
