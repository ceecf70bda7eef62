package dev.penstock.chamber;

import dev.penstock.combustion.gas.GasState;
import dev.penstock.errors.Require;
import java.util.Optional;

/**
 * What runs along the wall where it is not the gas of the whole chamber. The same parting of the injected flow gives the loss of
 * impulse, so that nothing shields the wall without costing what it costs.
 *
 * @param filmShare film of fuel over the flow through the throat (-); zero without a film
 * @param outer gas of the outer zone, if there is one
 * @param velocityFactor what film and outer zone leave of the characteristic velocity (-)
 */
public record WallStream(double filmShare, Optional<Outer> outer, double velocityFactor) {

    /**
     * @param gas equilibrium gas of the zone at chamber pressure
     * @param characteristicVelocity ideal c* of the zone (m/s)
     * @param mixtureRatioBias mixture ratio of the zone over that of the chamber (-)
     */
    public record Outer(GasState gas, double characteristicVelocity, double mixtureRatioBias) {}

    public WallStream {
        Require.within("wall stream", "film over the flow through the throat (-)", filmShare, 0, 0.5);
        Require.positive("wall stream", "factor on the characteristic velocity (-)", velocityFactor);
    }
}
