package dev.penstock.cycles.questions;

import dev.penstock.cooling.jacket.JacketLimit;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.origin.TankLimit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.SearchFailed;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.LimitKind;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.pump.PumpLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;

/**
 * Searches the highest chamber pressure at which a concept closes within its limits, with the balance as inner problem. It
 * climbs a ladder of pressures that is the same for every engine, so that the pressure written in the concept has no part in
 * the answer, and closes in on the end between two rungs. All limits of a balance count; one that no chamber pressure keeps with the
 * others is left out by name if it is one of the shape of channels, which an engineer may state.
 */
public final class LimitSearch {

    /** Name of the limit where gas as hot as the turbine stands closes no further. */
    static final String TURBINE = "turbine inlet temperature";

    private static final String POWER = "power balance";

    /** Limits of what can be made, which other channels than the sized ones may keep: no other limit is ever left out. */
    private static final Set<LimitKind> MAY_BE_LEFT_OUT = Set.of(
            JacketLimit.CHANNEL_WIDTH,
            JacketLimit.CHANNEL_HEIGHT,
            JacketLimit.LAND_WIDTH,
            JacketLimit.CHANNEL_ASPECT_RATIO);

    private static final double LADDER = 1e6;
    private static final double RUNG = 1.5;
    private static final double LOWEST = 4e4;
    private static final double HIGHEST = 1e8;
    private static final double TOLERANCE = 3e-4;
    private static final int MOST_TRIES = 40;
    private static final int TRIES_PER_HALVING = 3;
    private static final int MOST_SECOND_TRIES = 8;
    private static final int MISSES_IN_A_ROW = 3;
    private static final double CHANGE = 0.02;

    private final Balancer balancer;
    private final Concept concept;

    LimitSearch(Balancer balancer, Concept concept) {
        this.balancer = balancer;
        this.concept = concept;
    }

    /**
     * @param merit what the best pressure is best for; empty to leave out the best pressure and what each limit is worth
     * @return the reach
     */
    LimitResult search(Optional<Merit> merit) {
        PressureTrials trials = new PressureTrials(balancer, concept);
        End end = overLadder(trials);
        return result(trials, end, merit);
    }

    /** The same without best pressure and worths, from the answer for a concept that differs little. */
    LimitResult search(LimitResult near, List<Balancer.Solved> solutions) {
        PressureTrials trials = new PressureTrials(balancer, concept);
        trials.startFrom(solutions);
        trials.leaveOut(Set.copyOf(
                near.leftOut().stream().map(LimitResult.LeftOut::name).toList()));
        Optional<End> end = Optional.empty();
        try {
            end = beside(trials, near.chamberPressure());
        } catch (SearchFailed e) {
            // A few solutions may not show what ends them; the whole ladder has more.
        }
        return end.isPresent() ? result(trials, end.get(), Optional.empty()) : search(Optional.empty());
    }

    /** Where a search ends: the last pressure that keeps the limits, and the first that does not. */
    private record End(PressureTrial last, String limit, String why, List<LimitResult.LeftOut> leftOut) {}

    // ---- over the whole ladder

    private End overLadder(PressureTrials trials) {
        climb(trials);
        List<LimitResult.LeftOut> leftOut = new ArrayList<>();
        if (highest(trials).isEmpty()) {
            Map<String, LimitCheck> missed = trials.leastMissed(MAY_BE_LEFT_OUT);
            trials.leaveOut(missed.keySet());
            missed.values()
                    .forEach(check -> leftOut.add(new LimitResult.LeftOut(
                            check.name(),
                            String.format(
                                    Locale.ROOT,
                                    "no chamber pressure tried keeps it with the others; missed by %s at least",
                                    Notation.share(-check.margin())))));
            climb(trials);
        }
        PressureTrial low = highest(trials).orElseThrow(() -> nothingKept(trials));
        return ended(trials, closeIn(trials, upwards(trials, low)), leftOut);
    }

    /** From the lowest rung that closes upwards, until nothing closes or limits are missed for good; then downwards if need be. */
    private static void climb(PressureTrials trials) {
        int first = -1;
        for (int k = 0; rung(k) < HIGHEST && first < 0; k++) {
            first = trials.at(rung(k)).closed() ? k : -1;
        }
        int missed = 0;
        boolean any = false;
        for (int k = Math.max(first, 0); first >= 0 && rung(k) < HIGHEST && missed < MISSES_IN_A_ROW; k++) {
            PressureTrial trial = trials.at(rung(k));
            boolean over = !trial.closed()
                    && !trials.at(Math.min(HIGHEST, rung(k + 1))).closed();
            if (over) {
                break;
            }
            any |= trial.kept();
            missed = any && !trial.kept() ? missed + 1 : 0;
        }
        for (int k = Math.min(first, 0) - (first < 0 ? 0 : 1); !any && rung(k) > LOWEST; k--) {
            any = trials.at(rung(k)).kept();
        }
    }

    private static double rung(int k) {
        return LADDER * Math.pow(RUNG, k);
    }

    private static Optional<PressureTrial> highest(PressureTrials trials) {
        return trials.tried().descendingMap().values().stream()
                .filter(PressureTrial::kept)
                .findFirst();
    }

    /** The next that was tried above, or else the next rung. */
    private static PressureTrial above(PressureTrials trials, PressureTrial low) {
        Map.Entry<Double, PressureTrial> next = trials.tried().higherEntry(low.pressure());
        if (next != null) {
            return next.getValue();
        }
        if (low.pressure() * RUNG > HIGHEST) {
            throw new LimitReached(
                    "search",
                    String.format(
                            Locale.ROOT,
                            "no limit is met up to %.4g MPa; state limits.discharge_pressure or others",
                            low.pressure() / 1e6));
        }
        return trials.at(low.pressure() * RUNG);
    }

    private PenstockException nothingKept(PressureTrials trials) {
        Optional<PressureTrial> nearest = trials.tried().values().stream()
                .filter(PressureTrial::closed)
                .max((a, b) -> Double.compare(a.margin(), b.margin()));
        double low = trials.tried().firstKey();
        double high = trials.tried().lastKey();
        if (nearest.isEmpty()) {
            PressureTrial any = trials.tried().ceilingEntry(LADDER).getValue();
            return new SearchFailed(
                    Double.NaN,
                    String.format(
                            Locale.ROOT,
                            "%s: no balance was found at any of %d chamber pressures tried from %.3g to %.3g MPa; at %.3g MPa: %s",
                            concept.name(),
                            trials.tried().size(),
                            low / 1e6,
                            high / 1e6,
                            any.pressure() / 1e6,
                            any.why()));
        }
        PressureTrial trial = nearest.get();
        return new LimitReached(
                trial.limit(),
                String.format(
                        Locale.ROOT,
                        "no chamber pressure tried from %.3g to %.3g MPa keeps the limits; the nearest to it, %.3g MPa, misses"
                                + " %s by %s (%s)",
                        low / 1e6,
                        high / 1e6,
                        trial.pressure() / 1e6,
                        words(trial.limit()),
                        Notation.share(-trial.margin()),
                        trial.why()));
    }

    // ---- near a known reach

    private Optional<End> beside(PressureTrials trials, double pressure) {
        double step = 1.02;
        double at = pressure;
        for (int tries = 0; tries < MISSES_IN_A_ROW * 6; tries++) {
            PressureTrial here = trials.at(at);
            Map.Entry<Double, PressureTrial> next = trials.tried().higherEntry(at);
            Map.Entry<Double, PressureTrial> before = trials.tried().lowerEntry(at);
            if (here.kept() && next != null && !next.getValue().kept()) {
                return Optional.of(ended(trials, closeIn(trials, narrowed(trials, here, next.getValue())), List.of()));
            }
            if (!here.kept() && before != null && before.getValue().kept()) {
                return Optional.of(
                        ended(trials, closeIn(trials, narrowed(trials, before.getValue(), here)), List.of()));
            }
            at = here.kept() ? at * step : at / step;
            step = Math.min(1.5, step * step);
        }
        return Optional.empty();
    }

    // ---- between two rungs

    private record Bracket(PressureTrial low, PressureTrial high) {}

    /**
     * Narrows the bracket between a pressure that keeps the limits and one that does not. Where it ends at a pressure that was
     * tried in vain from farther away, that is tried again from the last solution, and then as a balance alone would be sought.
     */
    private static Bracket closeIn(PressureTrials trials, Bracket first) {
        Bracket bracket = first;
        for (int tries = 0; tries < MOST_SECOND_TRIES && !bracket.high.closed(); tries++) {
            PressureTrial again = trials.again(bracket.high.pressure());
            if (!again.closed()) {
                again = trials.alone(bracket.high.pressure());
            }
            if (!again.closed()) {
                return bracket;
            }
            bracket = again.kept() ? upwards(trials, again) : narrowed(trials, bracket.low, again);
        }
        return bracket;
    }

    private static Bracket upwards(PressureTrials trials, PressureTrial from) {
        PressureTrial low = from;
        PressureTrial high = above(trials, low);
        while (high.kept()) {
            low = high;
            high = above(trials, low);
        }
        return narrowed(trials, low, high);
    }

    private static Bracket narrowed(PressureTrials trials, PressureTrial first, PressureTrial beyond) {
        PressureTrial low = first;
        PressureTrial high = beyond;
        double width = high.pressure() - low.pressure();
        for (int tries = 1;
                tries <= MOST_TRIES && high.pressure() - low.pressure() > TOLERANCE * low.pressure();
                tries++) {
            boolean stalls = tries % TRIES_PER_HALVING == 0 && high.pressure() - low.pressure() > 0.5 * width;
            width = tries % TRIES_PER_HALVING == 0 ? high.pressure() - low.pressure() : width;
            PressureTrial middle = trials.at(between(low, high, stalls));
            if (middle.kept()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Bracket(low, high);
    }

    /**
     * Straight line through both margins where both exist, and a little towards the farther end, so that the next pair
     * encloses the limit closely; else the middle.
     */
    private static double between(PressureTrial low, PressureTrial high, boolean stalls) {
        double width = high.pressure() - low.pressure();
        double nudge = 0.4 * TOLERANCE * low.pressure() / width;
        boolean sloped = high.closed() && low.margin() < 5 && !stalls;
        if (!sloped) {
            return low.pressure() + 0.5 * width;
        }
        double share = low.margin() / (low.margin() - high.margin());
        share += share < 0.5 ? nudge : -nudge;
        return low.pressure() + Math.min(1 - nudge, Math.max(nudge, share)) * width;
    }

    /** @throws SearchFailed if the bracket ends where nothing closes, and no limit is seen to be behind it */
    private End ended(PressureTrials trials, Bracket bracket, List<LimitResult.LeftOut> leftOut) {
        PressureTrial beyond = bracket.high;
        if (beyond.closed()) {
            return new End(bracket.low, beyond.limit(), beyond.why(), leftOut);
        }
        PenstockException failure = beyond.failure().orElseThrow();
        if (failure instanceof LimitReached reached) {
            return new End(bracket.low, reached.limit(), reached.getMessage(), leftOut);
        }
        NavigableMap<Double, PressureTrial> below = trials.tried().headMap(bracket.low.pressure(), true);
        if (SolutionFold.endsAt(below, beyond.pressure())) {
            boolean turbine = trials.hottestGas();
            String why = turbine
                    ? "beyond it no turbine pressure ratio closes the power balance with gas at the temperature limit of the turbine"
                    : "the solution turns back there: beyond it the turbines cannot make the power";
            return new End(bracket.low, turbine ? TURBINE : POWER, why, leftOut);
        }
        throw new SearchFailed(
                bracket.low.pressure(),
                String.format(
                        Locale.ROOT,
                        "%s closes within its limits up to a chamber pressure of %.4g MPa, but the search failed beyond: at"
                                + " %.4g MPa no balance was found, and no limit is seen to be behind it (%s); how far the engine"
                                + " reaches is not known",
                        concept.name(),
                        bracket.low.pressure() / 1e6,
                        beyond.pressure() / 1e6,
                        failure.getMessage()));
    }

    // ---- the answer

    private LimitResult result(PressureTrials trials, End end, Optional<Merit> merit) {
        EngineBalance balance = end.last.balance().orElseThrow();
        String explanation = String.format(
                Locale.ROOT,
                "%s reaches a chamber pressure of %.4g MPa; %s stops it there (%s)%s",
                concept.name(),
                end.last.pressure() / 1e6,
                words(end.limit),
                end.why,
                end.leftOut.isEmpty() ? "" : "; left out: " + leftOut(end.leftOut));
        List<LimitCheck> counted = trials.counted(balance);
        Optional<LimitResult.Best> best = merit.map(m -> new BestPressure(trials, m).below(end.last, end.limit));
        List<LimitResult.Sensitivity> worths = merit.isPresent() ? sensitivities(trials, end, counted) : List.of();
        List<LimitResult.Point> points = trials.tried().values().stream()
                .map(t -> new LimitResult.Point(t.pressure(), t.kept(), t.closed() ? t.limit() : "no balance found"))
                .toList();
        return new LimitResult(
                end.last.pressure(),
                balance,
                end.limit,
                explanation,
                LimitSetting.of(concept, balance),
                best,
                counted,
                end.leftOut,
                worths,
                points,
                trials.solutions());
    }

    private static String leftOut(List<LimitResult.LeftOut> list) {
        return String.join(
                ", ",
                list.stream()
                        .map(l -> words(l.name()) + " (" + l.reason() + ")")
                        .toList());
    }

    private static String words(String limit) {
        return limit.replace(".", ": ").replace('_', ' ');
    }

    /** What the limit that binds is worth, the others being worth nothing there. */
    private List<LimitResult.Sensitivity> sensitivities(PressureTrials trials, End end, List<LimitCheck> counted) {
        Optional<LimitCheck> binding =
                counted.stream().filter(c -> c.name().equals(end.limit)).findFirst();
        if (binding.isEmpty() && !end.limit.equals(TURBINE)) {
            return List.of();
        }
        String moved = binding.map(LimitSearch::key).orElse(TURBINE);
        double at = end.last.pressure();
        PressureTrials relaxed = trials.relaxed(moved, 1 + CHANGE);
        double reached;
        try {
            reached = beside(relaxed, at).map(e -> e.last.pressure()).orElse(at);
        } catch (SearchFailed e) {
            reached = e.last();
        }
        List<LimitResult.Sensitivity> list = new ArrayList<>();
        list.add(new LimitResult.Sensitivity(moved, (reached / at - 1) / CHANGE, CHANGE, reached));
        counted.stream()
                .filter(c -> !c.sizing())
                .map(LimitSearch::key)
                .distinct()
                .filter(key -> !key.equals(moved))
                .forEach(key -> list.add(new LimitResult.Sensitivity(key, 0, CHANGE, at)));
        return list;
    }

    /** What the concept would change to move a limit: one key for all pumps and tanks, else the limit's own name. */
    public static String key(LimitCheck check) {
        if (check.kind() == PumpLimit.DISCHARGE_PRESSURE) {
            return ConceptTables.LIMITS
                    .of(EngineInputs.DISCHARGE_PRESSURE_LIMIT)
                    .path();
        }
        return check.kind() == TankLimit.PRESSURE
                ? ConceptTables.LIMITS.of(EngineInputs.TANK_PRESSURE_LIMIT).path()
                : check.name();
    }
}
