package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Finds a balance from afar: where the first guess is not good enough, the same concept is closed at chamber pressures of a
 * fixed ladder, and each solution is followed towards the pressure that is asked for, in steps that shrink where they fail
 * and grow where they do not, from each side once: a walk from further away ends where the nearer one did. If none arrives, pressures
 * between are tried by their own first guess where the guesses around them came near; what closes there is followed in turn. The failure then names the pressures between which it was seen: one that closes, and those that were tried
 * in vain. The ladder does not depend on the pressure asked for, so that two questions about one engine agree.
 */
public final class PressureContinuation {

    private static final double LADDER = 1e6;
    private static final double RUNG = Math.log(1.5);
    private static final double LOWEST_SHARE = 0.08;
    private static final double HIGHEST_SHARE = 2;
    private static final double FIRST_STEP = Math.log(1.3);
    private static final double LARGEST_STEP = Math.log(1.7);
    private static final double SMALLEST_STEP = 0.015;
    private static final double GROWTH = 1.6;
    private static final double SHRINKING = 0.35;
    private static final int RUNGS_BETWEEN = 4;
    private static final int MOST_WALKS = 3;

    /** Largest scaled residual that a first guess may end with for others nearby to be tried (-). */
    private static final double NEARLY = 0.2;

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
            return new Way(concept, e).find();
        }
    }

    /**
     * Follows a neighbouring solution to a concept, in steps that shrink where they fail.
     *
     * @throws PenstockException if that does not lead there
     */
    public Balancer.Solved follow(Concept concept, Balancer.Solved near) {
        Way way = new Way(concept, null);
        return way.walk(near).orElseThrow(() -> way.last);
    }

    /** All that was tried for one concept. */
    private final class Way {

        private final Concept concept;
        private final double target;
        private final NavigableMap<Double, Balancer.Solved> closed = new TreeMap<>();
        private final NavigableMap<Double, PenstockException> open = new TreeMap<>();
        /** Scaled residuals that pressures by their own first guess ended with (-); nothing where they close or failed otherwise. */
        private final NavigableMap<Double, Double> misses = new TreeMap<>();

        private PenstockException last;

        Way(Concept concept, PenstockException first) {
            this.concept = concept;
            this.target = concept.chamberPressure();
            this.last = first;
            if (first != null) {
                open.put(target, first);
                misses.put(target, miss(first));
            }
        }

        Balancer.Solved find() {
            boolean fromBelow = false;
            boolean fromAbove = false;
            for (double start : starts()) {
                if (start < target ? fromBelow : fromAbove) {
                    continue;
                }
                Optional<Balancer.Solved> found = attempt(start, Optional.empty());
                if (found.isPresent()) {
                    fromBelow |= start < target;
                    fromAbove |= start >= target;
                    Optional<Balancer.Solved> arrived = walk(found.get());
                    if (arrived.isPresent()) {
                        return arrived.get();
                    }
                }
            }
            return acrossGaps().orElseThrow(this::refusal);
        }

        /** Rungs of the ladder around the target, the nearest first. */
        private List<Double> starts() {
            List<Double> starts = new ArrayList<>();
            int low = (int) Math.ceil(Math.log(LOWEST_SHARE * target / LADDER) / RUNG);
            int high = (int) Math.floor(Math.log(HIGHEST_SHARE * target / LADDER) / RUNG);
            for (int k = low; k <= high; k++) {
                starts.add(LADDER * Math.exp(k * RUNG));
            }
            starts.sort(Comparator.comparingDouble(p -> Math.abs(Math.log(p / target))));
            return starts;
        }

        /** The solution at the target, if one leads there from a solution elsewhere. */
        Optional<Balancer.Solved> walk(Balancer.Solved from) {
            Balancer.Solved here = from;
            double at = from.balanceModels().concept().chamberPressure();
            double step = FIRST_STEP;
            while (step >= SMALLEST_STEP) {
                double left = Math.log(target / at);
                double next = Math.abs(left) <= step ? target : at * Math.exp(Math.copySign(step, left));
                Optional<Balancer.Solved> found = attempt(next, Optional.of(here));
                if (found.isEmpty()) {
                    step = SHRINKING * Math.min(step, Math.abs(left));
                    continue;
                }
                if (next == target) {
                    return found;
                }
                here = found.get();
                at = next;
                step = Math.min(LARGEST_STEP, step * GROWTH);
            }
            return Optional.empty();
        }

        /** Pressures between the last that closes and the target, by their own first guess. */
        private Optional<Balancer.Solved> acrossGaps() {
            for (int round = 0; round < MOST_WALKS; round++) {
                Double reached = closed.lowerKey(target);
                if (reached == null) {
                    return Optional.empty();
                }
                Optional<Balancer.Solved> beyond = Optional.empty();
                int rung = (int) Math.ceil(Math.log(target / LADDER) / RUNG * RUNGS_BETWEEN) - 1;
                for (; beyond.isEmpty(); rung--) {
                    double pressure = LADDER * Math.exp(rung * RUNG / RUNGS_BETWEEN);
                    if (pressure <= reached) {
                        break;
                    }
                    if (!open.containsKey(pressure) && expectedMiss(pressure) <= NEARLY) {
                        beyond = attempt(pressure, Optional.empty());
                    }
                }
                if (beyond.isEmpty()) {
                    return Optional.empty();
                }
                Optional<Balancer.Solved> arrived = walk(beyond.get());
                if (arrived.isPresent()) {
                    return arrived;
                }
            }
            return Optional.empty();
        }

        /** What a first guess would end with, from those tried below and above. */
        private double expectedMiss(double pressure) {
            var below = misses.floorEntry(pressure);
            var above = misses.ceilingEntry(pressure);
            if (below == null || above == null) {
                return 0;
            }
            double span = Math.log(above.getKey() / below.getKey());
            double share = span == 0 ? 0 : Math.log(pressure / below.getKey()) / span;
            return (1 - share) * below.getValue() + share * above.getValue();
        }

        private static double miss(PenstockException e) {
            return e instanceof NotConverged failure && Double.isFinite(failure.worstResidual())
                    ? failure.worstResidual()
                    : 0;
        }

        private Optional<Balancer.Solved> attempt(double pressure, Optional<Balancer.Solved> near) {
            try {
                Balancer.Solved solved = balancer.solve(concept.withChamberPressure(pressure), near);
                closed.put(pressure, solved);
                if (near.isEmpty()) {
                    misses.put(pressure, 0.0);
                }
                open.remove(pressure);
                return Optional.of(solved);
            } catch (InvalidInput | ConservationViolated e) {
                throw e;
            } catch (PenstockException e) {
                last = e;
                open.put(pressure, e);
                if (near.isEmpty()) {
                    misses.put(pressure, miss(e));
                }
                return Optional.empty();
            }
        }

        private LimitReached refusal() {
            String title = concept.cycle().title().toLowerCase(Locale.ROOT);
            Double below = closed.lowerKey(target);
            Double above = closed.higherKey(target);
            String reason = open.get(target).getMessage();
            if (below == null && above == null) {
                return new LimitReached(
                        "balance",
                        String.format(
                                Locale.ROOT,
                                "%s: no balance was found at a chamber pressure of %.4g MPa, nor at any of %d tried from"
                                        + " %.4g to %.4g MPa; %s (%s)",
                                title,
                                target / 1e6,
                                open.size(),
                                open.firstKey() / 1e6,
                                open.lastKey() / 1e6,
                                advice(concept),
                                reason));
            }
            boolean upwards = below != null;
            double reached = upwards ? below : above;
            NavigableMap<Double, PenstockException> between =
                    upwards ? open.subMap(reached, false, target, true) : open.subMap(target, true, reached, false);
            double nearest = upwards ? between.firstKey() : between.lastKey();
            return new LimitReached(
                    "balance",
                    String.format(
                            Locale.ROOT,
                            "%s closes at a chamber pressure of %.4g MPa; at %d pressures tried from %.4g MPa to the %.4g MPa"
                                    + " asked for no balance was found, which says nothing of those between; %s (there: %s)",
                            title,
                            reached / 1e6,
                            between.size(),
                            nearest / 1e6,
                            target / 1e6,
                            advice(concept),
                            reason));
        }
    }

    private static String advice(Concept concept) {
        return switch (concept.cycle().traits().closure()) {
            case GAS_FLOW -> "what may help: hotter gas, a higher turbine pressure ratio or better pumps";
            case RATIO_OR_TEMPERATURE -> "what may help: hotter gas, better pumps or lower pressure losses";
            case RATIO -> "what may help: more heat for the fuel, for example by a longer chamber, or better pumps";
            case TANK_PRESSURE, MOTOR_POWER -> "change the pressures";
        };
    }
}
