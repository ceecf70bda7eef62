package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds a balance from afar: where the first guess is not good enough, the same concept is closed at a lower chamber
 * pressure, where power is plentiful, and followed upwards. If it ends on the way there, the pressure at which it ends is
 * the answer.
 */
public final class PressureContinuation {

    private static final double[] STARTS = {0.4, 0.1};
    private static final double FIRST_STEP = 1.5;
    private static final double SMALLEST_STEP = 1.04;
    private static final int MOST_TRIES = 12;

    private final Balancer balancer;

    public PressureContinuation(Balancer balancer) {
        this.balancer = balancer;
    }

    public Balancer.Solved solve(Concept concept) {
        try {
            return balancer.solve(concept, Optional.empty());
        } catch (InvalidInput | ConservationViolated e) {
            throw e;
        } catch (PenstockException e) {
            boolean elsewhere = e instanceof LimitReached
                    || concept.cycle().traits().closure() == CycleTraits.Closure.TANK_PRESSURE;
            if (elsewhere) {
                throw e;
            }
            return fromBelow(concept, e);
        }
    }

    /**
     * Follows a neighbouring solution to a concept: straight, else by way of the middle.
     *
     * @throws PenstockException if that does not lead there
     */
    public Balancer.Solved follow(Concept concept, Balancer.Solved near) {
        try {
            return balancer.solve(concept, Optional.of(near));
        } catch (InvalidInput | ConservationViolated e) {
            throw e;
        } catch (PenstockException e) {
            double from = near.balanceModels().concept().chamberPressure();
            double middle = Math.sqrt(from * concept.chamberPressure());
            if (Math.abs(middle / from - 1) < SMALLEST_STEP - 1) {
                throw e;
            }
            Balancer.Solved between = balancer.solve(concept.withChamberPressure(middle), Optional.of(near));
            return balancer.solve(concept, Optional.of(between));
        }
    }

    private Balancer.Solved fromBelow(Concept concept, PenstockException first) {
        double target = concept.chamberPressure();
        Balancer.Solved below = null;
        for (double share : STARTS) {
            try {
                below = balancer.solve(concept.withChamberPressure(share * target), Optional.empty());
                break;
            } catch (PenstockException e) {
                // a still lower pressure may do
            }
        }
        if (below == null) {
            throw first instanceof NotConverged ? nowhere(concept, first) : first;
        }
        double reached = below.balanceModels().concept().chamberPressure();
        double step = FIRST_STEP;
        PenstockException last = first;
        for (int tries = 0; tries < MOST_TRIES && step >= SMALLEST_STEP; tries++) {
            double next = Math.min(target, reached * step);
            try {
                below = balancer.solve(concept.withChamberPressure(next), Optional.of(below));
                reached = next;
                if (next == target) {
                    return below;
                }
            } catch (PenstockException e) {
                last = e;
                step = Math.sqrt(step);
            }
        }
        throw new LimitReached(
                "power balance",
                String.format(
                        Locale.ROOT,
                        "%s closes only up to a chamber pressure of about %.4g MPa, %.4g MPa is asked for; %s (beyond: %s)",
                        concept.cycle().title().toLowerCase(Locale.ROOT),
                        reached / 1e6,
                        target / 1e6,
                        advice(concept),
                        last.getMessage()));
    }

    private static LimitReached nowhere(Concept concept, PenstockException first) {
        return new LimitReached(
                "power balance",
                String.format(
                        Locale.ROOT,
                        "%s closes neither at a chamber pressure of %.4g MPa nor down to %.2g of it; %s (%s)",
                        concept.cycle().title().toLowerCase(Locale.ROOT),
                        concept.chamberPressure() / 1e6,
                        STARTS[STARTS.length - 1],
                        advice(concept),
                        first.getMessage()));
    }

    private static String advice(Concept concept) {
        return switch (concept.cycle().traits().closure()) {
            case GAS_FLOW -> "raise gas temperature, turbine pressure ratio or pump efficiency";
            case RATIO_OR_TEMPERATURE -> "raise gas temperature or pump efficiency, or lower the pressure losses";
            case RATIO ->
                "let the jacket heat the fuel more, for example by a longer chamber, or raise pump efficiency";
            case TANK_PRESSURE, MOTOR_POWER -> "change the pressures";
        };
    }
}
