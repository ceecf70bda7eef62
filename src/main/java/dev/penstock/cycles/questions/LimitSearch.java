package dev.penstock.cycles.questions;

import dev.penstock.cooling.jacket.JacketLimit;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.BurnerDesign;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.origin.TankLimit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.solving.BalanceReport;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.cycles.solving.PressureContinuation;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.PenstockException;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.LimitKind;
import dev.penstock.turbomachinery.pump.PumpLimit;
import dev.penstock.turbomachinery.turbine.TurbineLimit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Searches the highest chamber pressure at which a concept closes within its hardware limits, with the balance as inner
 * problem. Where the balance may choose between gas temperature and turbine pressure ratio, the gas is taken as hot as
 * the turbine stands, so that the end of the search is the end of the turbine.
 */
public final class LimitSearch {

    /** Limits that stop a search; other checks of a design do not depend on chamber pressure or can be designed away. */
    private static final Set<LimitKind> STOPPING = Set.of(
            TurbineLimit.INLET_TEMPERATURE,
            PumpLimit.DISCHARGE_PRESSURE,
            PumpLimit.TIP_SPEED,
            TankLimit.PRESSURE,
            JacketLimit.WALL_TEMPERATURE,
            JacketLimit.COOLANT_WALL_TEMPERATURE);

    private static final double GROWTH = 1.35;
    private static final double STEP_WITHOUT_BALANCE = 1.8;
    private static final double SMALLEST_GROWTH = 1.003;
    private static final double LARGEST_GROWTH = 2.5;
    private static final double OVERSHOOT = 1.15;
    private static final int TRIES_PER_HALVING = 3;
    private static final Comparator<Trial> BY_PRESSURE = Comparator.comparingDouble(Trial::pressure);
    private static final double LOWEST = 4e4;
    private static final double HIGHEST = 1e8;
    private static final double TOLERANCE = 2e-4;
    private static final int MOST_TRIES = 60;
    private static final double CHANGE = 0.02;
    private static final double ROUND_OFF = 1e-6;
    private static final String POWER = "power balance";
    private static final String TURBINE = "turbine inlet temperature";

    private final Balancer balancer;
    private final Concept concept;
    private final Map<String, Double> factors = new TreeMap<>();
    private final Map<Double, Trial> trials = new TreeMap<>();
    private final List<Balancer.Solved> starts = new ArrayList<>();

    /** One chamber pressure: the solution if there is one, else why not. */
    private record Trial(
            double pressure,
            Optional<EngineBalance> balance,
            Balancer.Solved solved,
            double margin,
            String limit,
            String why) {

        boolean within() {
            return margin >= 0;
        }
    }

    LimitSearch(Balancer balancer, Concept concept) {
        this.balancer = balancer;
        this.concept = concept;
    }

    LimitResult search() {
        return search(true);
    }

    /** The same; what each limit is worth only if asked for, which takes about as long again. */
    LimitResult search(boolean worths) {
        Trial best = highest(concept);
        Trial beyond = next(best.pressure());
        EngineBalance balance = best.balance().orElseThrow();
        List<LimitCheck> held = balance.limits().stream().filter(this::stops).toList();
        List<LimitResult.Point> points = trials.values().stream()
                .map(t -> new LimitResult.Point(t.pressure(), t.within(), t.limit()))
                .toList();
        String explanation = String.format(
                Locale.ROOT,
                "%s reaches a chamber pressure of %.4g MPa; %s stops it there (%s)",
                concept.name(),
                best.pressure() / 1e6,
                beyond.limit().replace(".", ": ").replace('_', ' '),
                beyond.why());
        return new LimitResult(
                best.pressure(),
                balance,
                beyond.limit(),
                explanation,
                held,
                worths ? sensitivities(best, beyond.limit(), held) : List.of(),
                points);
    }

    // ---- the search

    private Trial highest(Concept asked) {
        Trial low = known(Trial::within).max(BY_PRESSURE).orElse(null);
        Trial high = known(t -> !t.within()).min(BY_PRESSURE).orElse(null);
        if (low == null && high == null) {
            Trial first = attempt(asked, asked.chamberPressure());
            low = first.within() ? first : null;
            high = first.within() ? null : first;
        }
        Trial before = null;
        while (low == null) {
            if (high.pressure() <= LOWEST) {
                Trial asItWas = known(t -> true).max(BY_PRESSURE).orElse(high);
                throw new LimitReached(
                        asItWas.limit(),
                        String.format(
                                Locale.ROOT,
                                "no chamber pressure down to %.3g MPa keeps the limits; at %.3g MPa it is: %s (%s)",
                                high.pressure() / 1e6,
                                asItWas.pressure() / 1e6,
                                asItWas.limit(),
                                asItWas.why()));
            }
            double step = high.solved() == null ? STEP_WITHOUT_BALANCE : growth(high, before);
            Trial trial = attempt(asked, Math.max(LOWEST, high.pressure() / step));
            before = high;
            low = trial.within() ? trial : null;
            high = trial.within() ? high : trial;
        }
        before = null;
        while (high == null) {
            if (low.pressure() >= HIGHEST) {
                throw new LimitReached(
                        "search",
                        String.format(
                                Locale.ROOT,
                                "no limit is met up to %.4g MPa; state limits.discharge_pressure or others",
                                low.pressure() / 1e6));
            }
            Trial trial = attempt(asked, Math.min(HIGHEST, low.pressure() * growth(low, before)));
            before = low;
            high = trial.within() ? null : trial;
            low = trial.within() ? trial : low;
        }
        return closeIn(asked, low, high);
    }

    private Stream<Trial> known(Predicate<Trial> wanted) {
        return trials.values().stream().filter(wanted);
    }

    /**
     * Factor to the next pressure: a little beyond the place where a straight line through the last two margins vanishes, in
     * logarithmic pressure, where there is one.
     */
    private static double growth(Trial last, Trial before) {
        boolean line = before != null && before.solved() != null && last.solved() != null;
        if (!line || last.limit().equals(before.limit()) && last.margin() == before.margin()) {
            return GROWTH;
        }
        double step = Math.log(last.pressure() / before.pressure());
        double factor = Math.exp(OVERSHOOT * Math.abs(step * last.margin() / (before.margin() - last.margin())));
        boolean closer = Math.abs(last.margin()) < Math.abs(before.margin());
        return closer ? Math.max(SMALLEST_GROWTH, Math.min(LARGEST_GROWTH, factor)) : GROWTH;
    }

    /** Narrows the bracket between a pressure that keeps the limits and one that does not. */
    private Trial closeIn(Concept asked, Trial first, Trial beyond) {
        Trial low = first;
        Trial high = beyond;
        double width = high.pressure() - low.pressure();
        for (int tries = 1;
                tries <= MOST_TRIES && high.pressure() - low.pressure() > TOLERANCE * low.pressure();
                tries++) {
            boolean stalls = tries % TRIES_PER_HALVING == 0 && high.pressure() - low.pressure() > 0.5 * width;
            width = tries % TRIES_PER_HALVING == 0 ? high.pressure() - low.pressure() : width;
            Trial middle = attempt(asked, between(low, high, stalls));
            if (middle.within()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * Straight line through both margins where both exist, and a little towards the farther end, so that the next pair
     * encloses the limit closely; else the middle.
     */
    private static double between(Trial low, Trial high, boolean stalls) {
        double width = high.pressure() - low.pressure();
        double nudge = 0.4 * TOLERANCE * low.pressure() / width;
        boolean sloped = high.solved() != null && low.margin() < 5 && !stalls;
        if (!sloped) {
            return low.pressure() + 0.5 * width;
        }
        double share = low.margin() / (low.margin() - high.margin());
        share += share < 0.5 ? nudge : -nudge;
        return low.pressure() + Math.min(1 - nudge, Math.max(nudge, share)) * width;
    }

    private Trial attempt(Concept asked, double pressure) {
        Trial trial = evaluate(asked, pressure);
        trials.put(pressure, trial);
        return trial;
    }

    private Trial evaluate(Concept asked, double pressure) {
        Concept there = asHotAsAllowed(asked).withChamberPressure(pressure);
        try {
            Balancer.Solved solved = solve(there, pressure);
            return judged(pressure, BalanceReport.of(solved), solved);
        } catch (InvalidInput e) {
            throw e;
        } catch (PenstockException e) {
            String limit = limitBehind(e);
            boolean turbine = limit.equals(POWER) && temperatureIsSet();
            String why = turbine ? "beyond it no turbine pressure ratio closes the power balance" : e.getMessage();
            return new Trial(pressure, Optional.empty(), null, -1, turbine ? TURBINE : limit, why);
        }
    }

    private Trial judged(double pressure, EngineBalance balance, Balancer.Solved solved) {
        LimitCheck least = balance.limits().stream()
                .filter(this::stops)
                .min(Comparator.comparingDouble(this::margin))
                .orElseThrow(() -> new IllegalStateException("no limit to keep"));
        boolean inBar = least.unit().equals("Pa");
        String why = String.format(
                Locale.ROOT,
                "%.5g %s against %.5g",
                inBar ? least.value() / 1e5 : least.value(),
                inBar ? "bar" : least.unit(),
                inBar ? bound(least) / 1e5 : bound(least));
        return new Trial(pressure, Optional.of(balance), solved, margin(least), least.name(), why);
    }

    /** What a missing balance comes from: the limit that says so, the cycle's own equations, or a model around them. */
    private static String limitBehind(PenstockException e) {
        if (e instanceof LimitReached reached) {
            return reached.limit();
        }
        return switch (e.subject()) {
            case BALANCE -> POWER;
            case JACKET -> "cooling";
            case MODEL -> "range of a model";
        };
    }

    private Balancer.Solved solve(Concept there, double pressure) {
        Optional<Balancer.Solved> near = Stream.concat(
                        starts.stream(), known(t -> t.solved() != null).map(Trial::solved))
                .min(Comparator.comparingDouble(
                        n -> Math.abs(Math.log(n.balanceModels().concept().chamberPressure() / pressure))));
        if (near.isPresent()) {
            return new PressureContinuation(balancer).follow(there, near.get());
        }
        return new PressureContinuation(balancer).solve(there);
    }

    private Trial next(double pressure) {
        return trials.values().stream()
                .filter(t -> t.pressure() > pressure && !t.within())
                .findFirst()
                .orElseThrow();
    }

    /** Takes over what another search has solved, held against this one's limits; nothing if engines themselves differ. */
    private void learnFrom(LimitSearch other, String moved) {
        if (moved.equals(TURBINE)) {
            other.known(Trial::within).max(BY_PRESSURE).ifPresent(t -> starts.add(t.solved()));
            return;
        }
        for (Trial trial : other.trials.values()) {
            trials.put(
                    trial.pressure(),
                    trial.balance()
                            .map(b -> judged(trial.pressure(), b, trial.solved()))
                            .orElse(trial));
        }
    }

    // ---- limits

    private boolean temperatureIsSet() {
        return concept.cycle().traits().closure() == CycleTraits.Closure.RATIO_OR_TEMPERATURE
                && concept.burners().values().stream()
                        .anyMatch(b -> b.temperature().isPresent());
    }

    /** Gas of one temperature at every chamber pressure cannot end the search, unless it is too hot from the start. */
    private boolean temperatureIsHeld(LimitCheck check) {
        boolean held = concept.cycle().traits().closure() == CycleTraits.Closure.GAS_FLOW
                && concept.burners().values().stream()
                        .anyMatch(b -> b.temperature().isPresent());
        return held && check.margin() > -ROUND_OFF;
    }

    /** Burners with a given temperature run as hot as their turbine stands. */
    private Concept asHotAsAllowed(Concept asked) {
        if (!temperatureIsSet()) {
            return asked;
        }
        Map<Burner, BurnerDesign> burners = new EnumMap<>(Burner.class);
        asked.burners().forEach((burner, design) -> {
            double limit = asked.turbineLimit(burner) * factors.getOrDefault(TURBINE, 1.0);
            burners.put(burner, design.temperature().isPresent() ? design.withTemperature(limit) : design);
        });
        return asked.withGas(burners, asked.turbines());
    }

    private boolean stops(LimitCheck check) {
        boolean temperature = check.kind() == TurbineLimit.INLET_TEMPERATURE;
        boolean set = temperature && (temperatureIsSet() || temperatureIsHeld(check));
        return STOPPING.contains(check.kind()) && !set;
    }

    private double bound(LimitCheck check) {
        return check.limit() * factors.getOrDefault(key(check), 1.0);
    }

    /** What the concept would change to move a limit: one key for all pumps and tanks, else the limit's own name. */
    public static String key(LimitCheck check) {
        if (check.kind() == PumpLimit.DISCHARGE_PRESSURE) {
            return "limits.discharge_pressure";
        }
        return check.kind() == TankLimit.PRESSURE ? "limits.tank_pressure" : check.name();
    }

    private double margin(LimitCheck check) {
        return new LimitCheck(
                        check.kind(),
                        check.owner(),
                        check.value(),
                        bound(check),
                        check.unit(),
                        check.upper(),
                        check.source())
                .margin();
    }

    private List<LimitResult.Sensitivity> sensitivities(Trial best, String binding, List<LimitCheck> held) {
        List<LimitResult.Sensitivity> list = new ArrayList<>();
        String moved = held.stream()
                .filter(h -> h.name().equals(binding))
                .map(LimitSearch::key)
                .findFirst()
                .orElse(binding);
        boolean known =
                binding.equals(TURBINE) || held.stream().anyMatch(h -> h.name().equals(binding));
        if (known) {
            LimitSearch relaxed = new LimitSearch(balancer, concept);
            relaxed.factors.put(moved, 1 + CHANGE);
            relaxed.learnFrom(this, moved);
            double reached = best.pressure();
            try {
                reached = relaxed.highest(concept).pressure();
            } catch (LimitReached e) {
                // relaxed beyond what the search looks at: no number to give
            }
            list.add(new LimitResult.Sensitivity(moved, (reached / best.pressure() - 1) / CHANGE, CHANGE, reached));
        }
        held.stream()
                .map(LimitSearch::key)
                .distinct()
                .filter(key -> !key.equals(moved))
                .forEach(key -> list.add(new LimitResult.Sensitivity(key, 0, CHANGE, best.pressure())));
        return list;
    }
}
