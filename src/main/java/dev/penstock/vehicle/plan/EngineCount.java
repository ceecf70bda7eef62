package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;
import dev.penstock.quantities.Constants;
import java.util.OptionalInt;

/**
 * How many engines a stage has: a given number, or the fewest that lift it.
 *
 * @param given number of engines; empty for the fewest that meet both ratios below
 * @param thrustToWeight thrust over weight at ignition that all engines together must give (-)
 * @param least fewest engines taken, where none are given
 * @param enginesOut engines that may fail at ignition
 * @param thrustToWeightEngineOut thrust over weight that the others must still give (-)
 * @param open whether the ratio is a usual figure, in place of which a flight chooses the number
 */
public record EngineCount(
        OptionalInt given,
        double thrustToWeight,
        int least,
        int enginesOut,
        double thrustToWeightEngineOut,
        boolean open) {

    /** More engines than this on one stage is taken for a mistake in the input. */
    public static final int MOST = 100;

    /** A rule that somebody stated. */
    public EngineCount(
            OptionalInt given, double thrustToWeight, int least, int enginesOut, double thrustToWeightEngineOut) {
        this(given, thrustToWeight, least, enginesOut, thrustToWeightEngineOut, false);
    }

    public EngineCount {
        Require.within("engine count", "number of engines", given.orElse(1), 1, MOST);
        Require.notNegative("engine count", "thrust to weight (-)", thrustToWeight);
        Require.within("engine count", "fewest engines", least, 1, MOST);
        Require.within("engine count", "engines out", enginesOut, 0, given.orElse(MOST) - 1.0);
        Require.notNegative("engine count", "thrust to weight with engines out (-)", thrustToWeightEngineOut);
    }

    /**
     * @param number number of engines
     * @return that number whatever the stage weighs
     */
    public static EngineCount of(int number) {
        return new EngineCount(OptionalInt.of(number), 0, 1, 0, 0);
    }

    /**
     * @param thrustToWeight thrust over weight at ignition (-)
     * @return the fewest engines that give it
     */
    public static EngineCount lifting(double thrustToWeight) {
        return new EngineCount(OptionalInt.empty(), thrustToWeight, 1, 0, 0);
    }

    /**
     * @param startMass mass to lift (kg)
     * @param thrust thrust of one engine there (N)
     * @param otherThrust thrust of boosters beside it (N)
     * @return engines needed, at least one; the given number where one is given; more than any stage has where they give
     *     no thrust there
     */
    public int needed(double startMass, double thrust, double otherThrust) {
        if (given.isPresent()) {
            return given.getAsInt();
        }
        double weight = startMass * Constants.STANDARD_GRAVITY;
        if (!(thrust > 0)) {
            boolean enough =
                    Math.max(thrustToWeight, enginesOut == 0 ? 0 : thrustToWeightEngineOut) * weight <= otherThrust;
            return enough ? least : Integer.MAX_VALUE;
        }
        double all = Math.ceil((thrustToWeight * weight - otherThrust) / thrust - 1e-9);
        double others = enginesOut + Math.ceil((thrustToWeightEngineOut * weight - otherThrust) / thrust - 1e-9);
        return (int) Math.min(Integer.MAX_VALUE, Math.max(least, Math.max(all, enginesOut == 0 ? 0 : others)));
    }

    /**
     * @param startMass mass to lift (kg)
     * @param thrust thrust of one engine there (N)
     * @param otherThrust thrust of boosters beside it (N)
     * @param number number of engines
     * @param least least ratio where the stated one is open (-)
     * @return thrust over weight that is missing for the rule with that number (-); zero or less where it is met
     */
    public double missing(double startMass, double thrust, double otherThrust, int number, double least) {
        if (given.isPresent()) {
            return 0;
        }
        double weight = startMass * Constants.STANDARD_GRAVITY;
        double all = (open ? least : thrustToWeight) - (number * thrust + otherThrust) / weight;
        double out = thrustToWeightEngineOut - ((number - enginesOut) * thrust + otherThrust) / weight;
        return enginesOut == 0 ? all : Math.max(all, out);
    }
}
