package dev.penstock.cycles;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import dev.penstock.provenance.LimitCheck;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Searches the highest chamber pressure at which a concept closes within its hardware limits, with the balance as inner
 * problem. Where the balance may choose between gas temperature and turbine pressure ratio, the gas is taken as hot as
 * the turbine stands, so that the end of the search is the end of the turbine.
 */
final class LimitSearch {

    /** Limits that stop a search; other checks of a design do not depend on chamber pressure or can be designed away. */
    private static final List<String> STOPPING = List.of(
            ".inlet_temperature",
            ".discharge_pressure",
            ".tip_speed",
            "tank.pressure",
            ".wall_temperature",
            ".coolant_wall_temperature");

    private static final double GROWTH = 1.35;
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
        Trial best = highest(concept, Optional.empty());
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

    private Trial highest(Concept asked, Optional<Trial> start) {
        double pressure = start.map(Trial::pressure).orElse(asked.chamberPressure());
        Trial trial = attempt(asked, pressure);
        Trial low = trial;
        Trial high = trial;
        while (!low.within()) {
            high = low;
            pressure = low.pressure() / GROWTH;
            if (pressure < LOWEST) {
                throw new LimitReached(
                        trial.limit(),
                        String.format(
                                Locale.ROOT,
                                "no chamber pressure from %.4g MPa down to %.3g MPa keeps the limits; at the first: %s (%s)",
                                trial.pressure() / 1e6,
                                low.pressure() / 1e6,
                                trial.limit(),
                                trial.why()));
            }
            low = attempt(asked, pressure);
        }
        while (high.within()) {
            low = high;
            pressure = high.pressure() * GROWTH;
            if (pressure > HIGHEST) {
                throw new LimitReached(
                        "search",
                        String.format(
                                Locale.ROOT,
                                "no limit is met up to %.4g MPa; state limits.discharge_pressure or others",
                                high.pressure() / 1e6));
            }
            high = attempt(asked, pressure);
        }
        for (int tries = 0;
                tries < MOST_TRIES && high.pressure() - low.pressure() > TOLERANCE * low.pressure();
                tries++) {
            Trial middle = attempt(asked, between(low, high, tries));
            if (middle.within()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Straight line through both margins where both exist, else the middle; kept away from the ends. */
    private static double between(Trial low, Trial high, int tries) {
        double width = high.pressure() - low.pressure();
        double share = 0.5;
        boolean sloped = high.solved() != null && low.margin() < 5 && tries % 3 != 2;
        if (sloped) {
            share = low.margin() / (low.margin() - high.margin());
            share = share < 0.5 ? share + 0.3 * TOLERANCE : share - 0.3 * TOLERANCE;
        }
        share = Math.min(0.97, Math.max(0.03, share));
        return low.pressure() + share * width;
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
            EngineBalance balance = BalanceReport.of(solved);
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
        } catch (InvalidInput e) {
            throw e;
        } catch (PenstockException e) {
            String limit = limitBehind(e);
            boolean turbine = limit.equals(POWER) && temperatureIsSet();
            String why = turbine ? "beyond it no turbine pressure ratio closes the power balance" : e.getMessage();
            return new Trial(pressure, Optional.empty(), null, -1, turbine ? TURBINE : limit, why);
        }
    }

    /** What a missing balance comes from: the limit that says so, the cycle's own equations, or a model around them. */
    private static String limitBehind(PenstockException e) {
        if (e instanceof LimitReached reached) {
            return reached.limit();
        }
        boolean equations = e instanceof NotConverged open && open.what().contains(" balance, ");
        if (equations) {
            return POWER;
        }
        return e.getMessage().contains("cooling jacket") ? "cooling" : "range of a model";
    }

    private Balancer.Solved solve(Concept there, double pressure) {
        Optional<Balancer.Solved> near = trials.values().stream()
                .filter(t -> t.solved() != null)
                .min(Comparator.comparingDouble(t -> Math.abs(Math.log(t.pressure() / pressure))))
                .map(Trial::solved);
        if (near.isPresent()) {
            return new Approach(balancer).follow(there, near.get());
        }
        return new Approach(balancer).solve(there);
    }

    private Trial next(double pressure) {
        return trials.values().stream()
                .filter(t -> t.pressure() > pressure && !t.within())
                .findFirst()
                .orElseThrow();
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
            double limit = turbineLimit(asked, burner) * factors.getOrDefault(TURBINE, 1.0);
            burners.put(burner, design.temperature().isPresent() ? design.withTemperature(limit) : design);
        });
        return asked.withGas(burners, asked.turbines());
    }

    static double turbineLimit(Concept asked, Burner burner) {
        boolean two = asked.burners().size() > 1;
        OptionalDouble least = asked.turbines().entrySet().stream()
                .filter(e -> !two
                        || e.getKey() == (burner == Burner.OXIDIZER_RICH ? TurbinePlace.OXIDIZER : TurbinePlace.FUEL))
                .mapToDouble(e -> e.getValue().design().inletTemperatureLimit())
                .min();
        return least.orElseThrow();
    }

    private boolean stops(LimitCheck check) {
        boolean temperature = check.name().endsWith(".inlet_temperature");
        boolean set = temperature && (temperatureIsSet() || temperatureIsHeld(check));
        return STOPPING.stream().anyMatch(check.name()::endsWith) && !set;
    }

    private double bound(LimitCheck check) {
        return check.limit() * factors.getOrDefault(key(check), 1.0);
    }

    /** What the concept would change to move a limit: one key for all pumps and tanks, else the limit's own name. */
    static String key(LimitCheck check) {
        if (check.name().endsWith(".discharge_pressure")) {
            return "limits.discharge_pressure";
        }
        return check.name().endsWith("tank.pressure") ? "limits.tank_pressure" : check.name();
    }

    private double margin(LimitCheck check) {
        return new LimitCheck(check.name(), check.value(), bound(check), check.unit(), check.upper(), check.source())
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
            relaxed.trials.put(best.pressure(), best);
            double reached = best.pressure();
            try {
                reached = relaxed.highest(concept, Optional.of(best)).pressure();
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
