package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Finds a balance from afar: where the first guess is not good enough, the same concept is closed at chamber pressures of a
 * fixed ladder, and each solution is followed towards the pressure that is asked for, in steps that shrink where they fail
 * and grow where they do not, from each side once: a walk from further away ends where the nearer one did. The ladder goes down to the
 * first rung that ends at a limit: what sets it (no pump is needed, the coolant leaves what its properties are known for) holds all the
 * more below. If none arrives, pressures between are tried by their own first guess where the guesses around them came near; what closes
 * there is followed in turn. The failure then names the pressures between which it was seen: one that closes, and those that were tried
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

    /** Times that the ends of a bracket are asked by themselves before the sentence names none. */
    private static final int MOST_CHECKS = 3;

    private static final String SHOWN = "%.4g";
    private static final double SAME = 1e-6;

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
            if (seeksNoFurther(concept, e)) {
                throw e;
            }
            Way way = new Way(concept, e, new SoughtBalances(balancer, concept));
            return way.find().orElseThrow(way::refusal);
        }
    }

    /**
     * Follows a neighbouring solution to a concept, in steps that shrink where they fail.
     *
     * @throws PenstockException if that does not lead there
     */
    public Balancer.Solved follow(Concept concept, Balancer.Solved near) {
        Way way = new Way(concept, null, new SoughtBalances(balancer, concept));
        return way.walk(near).orElseThrow(() -> way.last);
    }

    /** Whether a balance that failed so is not sought from other pressures either. */
    private static boolean seeksNoFurther(Concept concept, PenstockException e) {
        return e instanceof LimitReached || concept.cycle().traits().closure() == CycleTraits.Closure.TANK_PRESSURE;
    }

    /** All that was tried for one concept. */
    private final class Way {

        private final Concept concept;
        private final double target;
        private final SoughtBalances sought;
        private final NavigableMap<Double, Balancer.Solved> closed = new TreeMap<>();
        private final NavigableMap<Double, PenstockException> open = new TreeMap<>();
        /** Scaled residuals that pressures by their own first guess ended with (-); nothing where they close or failed otherwise. */
        private final NavigableMap<Double, Double> misses = new TreeMap<>();

        /** Pressures that close no balance asked by themselves. */
        private final Set<Double> askedItself = new HashSet<>();

        private PenstockException last;

        Way(Concept concept, PenstockException first, SoughtBalances sought) {
            this.concept = concept;
            this.target = concept.chamberPressure();
            this.sought = sought;
            this.last = first;
            if (first != null) {
                open.put(target, first);
                misses.put(target, miss(first));
            }
        }

        /** A solution at the target, from solutions elsewhere. */
        Optional<Balancer.Solved> find() {
            boolean doneBelow = false;
            boolean doneAbove = false;
            for (double start : starts()) {
                boolean below = start < target;
                if (below ? doneBelow : doneAbove) {
                    continue;
                }
                Optional<Balancer.Solved> found = attempt(start, Optional.empty());
                doneBelow |= below && (found.isPresent() || last instanceof LimitReached);
                doneAbove |= !below && found.isPresent();
                Optional<Balancer.Solved> arrived = found.flatMap(this::walk);
                if (arrived.isPresent()) {
                    return arrived;
                }
            }
            return acrossGaps();
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
                Balancer.Solved solved = sought.solve(pressure, near);
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

        /**
         * The sentence of a failure. What it names as tried in vain was asked in the very way in which a balance asks; a pressure that then
         * closes, though steps from elsewhere did not lead there, moves the bracket.
         */
        private LimitReached refusal() {
            for (int checks = 0; checks < MOST_CHECKS; checks++) {
                List<Double> ends = ends();
                if (ends.stream().noneMatch(this::closesByItself)) {
                    return sentence(ends);
                }
            }
            return sentence(List.of());
        }

        /** Pressures beside the target that the sentence would name as tried in vain, with as many digits as it shows. */
        private List<Double> ends() {
            Double below = closed.lowerKey(target);
            Double above = closed.higherKey(target);
            if (below == null && above == null) {
                return Stream.of(open.firstKey(), open.lastKey())
                        .map(Way::shown)
                        .filter(p -> Math.abs(p - target) > SAME * target)
                        .toList();
            }
            double end = shown(
                    below != null
                            ? open.subMap(below, false, target, true).firstKey()
                            : open.subMap(target, true, above, false).lastKey());
            boolean between = below != null ? end > below && end < target : end < above && end > target;
            return between && Math.abs(end - target) > SAME * target ? List.of(end) : List.of();
        }

        private static double shown(double pressure) {
            return Double.parseDouble(String.format(Locale.ROOT, SHOWN, pressure));
        }

        private boolean closesByItself(double pressure) {
            if (askedItself.contains(pressure)) {
                return false;
            }
            try {
                closed.put(pressure, sought.solve(pressure, Optional.empty()));
            } catch (InvalidInput | ConservationViolated e) {
                throw e;
            } catch (PenstockException e) {
                Concept there = concept.withChamberPressure(pressure);
                Optional<Balancer.Solved> found =
                        seeksNoFurther(there, e) ? Optional.empty() : new Way(there, e, sought).find();
                if (found.isEmpty()) {
                    askedItself.add(pressure);
                    open.put(pressure, e);
                    return false;
                }
                closed.put(pressure, found.get());
            }
            open.remove(pressure);
            return true;
        }

        private LimitReached sentence(List<Double> ends) {
            String title = concept.cycle().title().toLowerCase(Locale.ROOT);
            String reason = open.get(target).getMessage();
            Double below = closed.lowerKey(target);
            Double above = closed.higherKey(target);
            if (below == null && above == null) {
                double low = Math.min(ends.isEmpty() ? target : ends.get(0), target);
                double high = Math.max(ends.isEmpty() ? target : ends.get(ends.size() - 1), target);
                String others = ends.isEmpty()
                        ? ""
                        : String.format(
                                Locale.ROOT,
                                ", nor at any of %d tried from %s to %s MPa",
                                open.size(),
                                mega(low),
                                mega(high));
                return new LimitReached(
                        "balance",
                        String.format(
                                Locale.ROOT,
                                "%s: no balance was found at a chamber pressure of %s MPa%s; %s (%s)",
                                title,
                                mega(target),
                                others,
                                advice(concept),
                                reason));
            }
            String tried = ends.isEmpty()
                    ? "at the"
                    : String.format(
                            Locale.ROOT,
                            "at %d pressures tried from %s MPa to the",
                            triedFrom(ends.get(0)),
                            mega(ends.get(0)));
            return new LimitReached(
                    "balance",
                    String.format(
                            Locale.ROOT,
                            "%s closes at a chamber pressure of %s MPa; %s %s MPa asked for no balance was found, which says"
                                    + " nothing of those between; %s (there: %s)",
                            title,
                            mega(below != null ? below : above),
                            tried,
                            mega(target),
                            advice(concept),
                            reason));
        }

        private static String mega(double pressure) {
            return new BigDecimal(pressure / 1e6)
                    .round(new MathContext(6))
                    .stripTrailingZeros()
                    .toPlainString();
        }

        /** How many pressures were tried in vain from one to the target, both counted. */
        private int triedFrom(double end) {
            return open.subMap(Math.min(end, target), true, Math.max(end, target), true)
                    .size();
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
