package dev.penstock.cycles.questions;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.solving.BalanceReport;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.cycles.solving.PressureContinuation;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.LimitKind;
import dev.penstock.turbomachinery.turbine.TurbineLimit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Balances of one concept over chamber pressure, each tried once and held against the limits that count: all of the balance
 * but those that are left out. Where the balance may choose between gas temperature and turbine pressure ratio, the gas is
 * taken as hot as the turbine stands.
 */
final class PressureTrials {

    private final Balancer balancer;
    private final Concept concept;
    private final Map<String, Double> factors = new HashMap<>();
    private final Set<String> leftOut = new HashSet<>();
    private final NavigableMap<Double, PressureTrial> trials = new TreeMap<>();
    private final List<Balancer.Solved> starts = new ArrayList<>();

    PressureTrials(Balancer balancer, Concept concept) {
        this.balancer = balancer;
        this.concept = concept;
    }

    /** Gas of burners whose temperature is stated, where a higher pressure ratio could do as well. */
    boolean hottestGas() {
        return concept.cycle().traits().closure() == CycleTraits.Closure.RATIO_OR_TEMPERATURE
                && concept.burners().values().stream()
                        .anyMatch(b -> b.temperature().isPresent());
    }

    NavigableMap<Double, PressureTrial> tried() {
        return trials;
    }

    PressureTrial at(double pressure) {
        PressureTrial known = trials.get(pressure);
        if (known == null) {
            known = evaluate(pressure, this::solve);
            trials.put(pressure, known);
        }
        return known;
    }

    /** The same, tried once more if it was in vain: solutions found since may lie nearer. */
    PressureTrial again(double pressure) {
        if (!at(pressure).closed()) {
            trials.put(pressure, evaluate(pressure, this::solve));
        }
        return at(pressure);
    }

    /** The same in the way of a balance that is asked for alone, so that the search ends nowhere where that does not. */
    PressureTrial alone(double pressure) {
        if (!at(pressure).closed()) {
            PressureTrial found = evaluate(pressure, new PressureContinuation(balancer)::solve);
            if (found.closed()) {
                trials.put(pressure, found);
            }
        }
        return at(pressure);
    }

    /** Leaves limits out of count and judges again what was tried. */
    void leaveOut(Set<String> names) {
        leftOut.addAll(names);
        judgeAgain();
    }

    /** The same trials against a limit that is changed by a factor. */
    PressureTrials relaxed(String key, double factor) {
        PressureTrials other = new PressureTrials(balancer, concept);
        other.leftOut.addAll(leftOut);
        other.factors.put(key, factor);
        if (key.equals(LimitSearch.TURBINE)) {
            trials.values().stream().flatMap(t -> t.solved().stream()).forEach(other.starts::add);
        } else {
            other.trials.putAll(trials);
            other.judgeAgain();
        }
        return other;
    }

    /** Starts from these solutions what is not solved nearer. */
    void startFrom(List<Balancer.Solved> solutions) {
        starts.addAll(solutions);
    }

    List<Balancer.Solved> solutions() {
        return trials.values().stream().flatMap(t -> t.solved().stream()).toList();
    }

    /** Every limit of a balance that counts. */
    List<LimitCheck> counted(EngineBalance balance) {
        return balance.limits().stream()
                .filter(l -> !leftOut.contains(l.name()))
                .toList();
    }

    private void judgeAgain() {
        trials.replaceAll((pressure, t) -> t.closed()
                ? judged(pressure, t.balance().orElseThrow(), t.solved().orElseThrow())
                : t);
    }

    private PressureTrial evaluate(double pressure, Function<Concept, Balancer.Solved> way) {
        try {
            Concept there = concept.withChamberPressure(pressure);
            if (hottestGas()) {
                there = there.withHottestGas(factors.getOrDefault(LimitSearch.TURBINE, 1.0));
            }
            Balancer.Solved solved = way.apply(there);
            return judged(pressure, BalanceReport.of(solved), solved);
        } catch (InvalidInput e) {
            throw e;
        } catch (PenstockException e) {
            return PressureTrial.failed(pressure, e);
        }
    }

    private Balancer.Solved solve(Concept there) {
        PressureContinuation continuation = new PressureContinuation(balancer);
        Optional<Balancer.Solved> near = java.util.stream.Stream.concat(starts.stream(), solutions().stream())
                .min(Comparator.comparingDouble(s ->
                        Math.abs(Math.log(s.balanceModels().concept().chamberPressure() / there.chamberPressure()))));
        if (near.isEmpty()) {
            return balancer.solve(there, Optional.empty());
        }
        try {
            return continuation.follow(there, near.get());
        } catch (InvalidInput e) {
            throw e;
        } catch (PenstockException e) {
            return balancer.solve(there, Optional.empty());
        }
    }

    private PressureTrial judged(double pressure, EngineBalance balance, Balancer.Solved solved) {
        Optional<LimitCheck> least =
                balance.limits().stream().filter(this::tells).min(Comparator.comparingDouble(this::margin));
        return new PressureTrial(
                pressure,
                Optional.of(balance),
                Optional.of(solved),
                least.map(this::margin).orElse(Double.MAX_VALUE),
                least.map(LimitCheck::name).orElse(""),
                least.map(this::numbers).orElse("no limit"),
                Optional.empty());
    }

    private String numbers(LimitCheck check) {
        boolean inBar = check.unit().equals("Pa");
        double scale = inBar ? 1e5 : 1;
        String unit = inBar ? "bar" : check.unit().equals("-") ? "" : check.unit();
        return String.format(Locale.ROOT, "%.5g %s against %.5g", check.value() / scale, unit, bound(check) / scale)
                .replace("  ", " ");
    }

    /**
     * Whether a margin can tell where a search ends. One that the choice of a speed keeps, or gas that is as hot as allowed at
     * every pressure, is kept but has no margin to lose.
     */
    private boolean tells(LimitCheck check) {
        boolean held = check.kind() == TurbineLimit.INLET_TEMPERATURE
                && heldTemperature()
                && check.margin() > -LimitCheck.ROUND_OFF;
        boolean chosen = check.sizing() && check.against(bound(check)).met();
        return !leftOut.contains(check.name()) && !held && !chosen;
    }

    private boolean heldTemperature() {
        return concept.cycle().traits().closure() == CycleTraits.Closure.GAS_FLOW
                && concept.burners().values().stream()
                        .anyMatch(b -> b.temperature().isPresent());
    }

    private double margin(LimitCheck check) {
        return check.against(bound(check)).margin();
    }

    private double bound(LimitCheck check) {
        boolean setsGas = check.sizing() && check.kind().sets() == LimitKind.Choice.GAS_TEMPERATURE;
        String key = setsGas ? LimitSearch.TURBINE : LimitSearch.key(check);
        return check.limit() * factors.getOrDefault(key, 1.0);
    }

    /**
     * What would have to be left out to keep the rest: the limits missed at the pressure that misses least among those at which
     * all but some kinds are kept, with the smallest miss of each there.
     */
    Map<String, LimitCheck> leastMissed(Set<LimitKind> some) {
        List<List<LimitCheck>> holding = trials.values().stream()
                .flatMap(t -> t.balance().stream())
                .map(b -> b.limits().stream().filter(this::tells).toList())
                .filter(l -> l.stream().allMatch(c -> c.met() || some.contains(c.kind())))
                .toList();
        Map<String, LimitCheck> missed = new TreeMap<>();
        holding.stream()
                .max(Comparator.comparingDouble(
                        l -> l.stream().mapToDouble(this::margin).min().orElse(0)))
                .ifPresent(least -> least.stream().filter(c -> !c.met()).forEach(c -> missed.put(c.name(), c)));
        holding.forEach(l -> l.stream()
                .filter(c -> missed.containsKey(c.name()) && !c.met())
                .forEach(c -> missed.merge(c.name(), c, (a, b) -> a.margin() >= b.margin() ? a : b)));
        return missed;
    }
}
