package dev.penstock.cycles.solving;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Follows solutions over chamber pressure towards the one asked for, in steps that shrink where they fail and grow where they do not.
 * From each solution whose next step would go beyond it, the pressure asked for itself is tried. Where a walk steps does not depend on
 * what is asked for: a walk towards a pressure on the way is the beginning of this one, and what this one tried in vain, that one tries
 * in vain.
 */
final class PressureWalk {

    private static final double FIRST_STEP = Math.log(1.3);
    private static final double LARGEST_STEP = Math.log(1.7);
    private static final double SMALLEST_STEP = 0.015;
    private static final double GROWTH = 1.6;
    private static final double SHRINKING = 0.35;

    private final SoughtBalances sought;

    /** Solutions from which a step did not lead on. */
    private final List<Stop> stops = new ArrayList<>();

    /**
     * @param from solution
     * @param pressure its chamber pressure (Pa)
     * @param beyond what was tried in vain from there, or not tried since what is asked for lies nearer (Pa)
     */
    private record Stop(Balancer.Solved from, double pressure, double beyond) {

        boolean passes(double other) {
            return beyond > pressure ? other > pressure && other <= beyond : other < pressure && other >= beyond;
        }
    }

    PressureWalk(SoughtBalances sought) {
        this.sought = sought;
    }

    /**
     * @param from a solution elsewhere
     * @return the solution at the pressure asked for, if steps lead there
     */
    Optional<Balancer.Solved> from(Balancer.Solved from) {
        double target = sought.target();
        Balancer.Solved here = from;
        double at = from.balanceModels().concept().chamberPressure();
        double direction = Math.signum(target - at);
        double step = FIRST_STEP;
        while (step >= SMALLEST_STEP) {
            double next = PressureLadder.shown(at * Math.exp(direction * step));
            boolean arrives = direction * (next - target) >= 0;
            Optional<Balancer.Solved> found = sought.follow(arrives ? target : next, here);
            if (found.isPresent() && arrives) {
                return found;
            }
            if (found.isPresent()) {
                here = found.get();
                at = next;
                step = Math.min(LARGEST_STEP, step * GROWTH);
            } else {
                stops.add(new Stop(here, at, next));
                step *= SHRINKING;
            }
        }
        return Optional.empty();
    }

    /**
     * Asks a pressure that was tried in vain in every way in which a question for it alone would: by its first guess, and from all
     * solutions from which a step went beyond it.
     *
     * @param pressure chamber pressure (Pa)
     * @return a solution there after all
     */
    Optional<Balancer.Solved> again(double pressure) {
        Optional<Balancer.Solved> found = sought.guess(pressure);
        for (int i = 0; i < stops.size() && found.isEmpty(); i++) {
            if (stops.get(i).passes(pressure)) {
                found = sought.follow(pressure, stops.get(i).from());
            }
        }
        return found;
    }
}
