package dev.penstock.study;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

/**
 * Finds how high every cycle with turbines can take the chamber pressure at a range of turbine temperatures, over all
 * processors. Each cycle is the concept read again with that cycle; where a burner makes the gas, each turbine runs at the
 * temperature asked for or at its own limit, whichever is lower, and the line ends where all turbines are at their limit.
 * A cycle that dumps its turbine gas goes no further than where that costs an allowed share of the specific impulse.
 */
public final class CycleReachRuns {

    /** What burners of built engines span, all cycles together: common practice, no source (K). */
    public static final List<Double> USUAL = List.of(600.0, 700.0, 800.0, 900.0, 1000.0, 1100.0);

    /** Chamber pressures of a jacket's line, over the reach. */
    private static final List<Double> SHARES = List.of(0.4, 0.55, 0.7, 0.85);

    private final EngineRuns runs;
    private final OptionalDouble exhaustLoss;

    /**
     * @param runs reads and balances concepts
     * @param exhaustLoss what dumped turbine gas may cost of the specific impulse in vacuum (-); empty for what the concept
     *     says, or the default of the other cycles
     */
    public CycleReachRuns(EngineRuns runs, OptionalDouble exhaustLoss) {
        this.exhaustLoss = exhaustLoss;
        this.runs = runs;
    }

    /** One search: a cycle at a temperature, or along its own temperatures if none is given. */
    private record Item(Cycle cycle, Concept concept, OptionalDouble temperature) {

        String title() {
            return cycle.title()
                    + (temperature.isPresent() ? " at " + Math.round(temperature.getAsDouble()) + " K" : "");
        }
    }

    /**
     * @param concept any concept
     * @param temperatures turbine temperatures, rising (K)
     * @param progress told of each search that is done
     * @param cancelled asked before each search; once it says yes, no more are begun
     * @return what every cycle with turbines reaches
     */
    public CycleReach run(Concept concept, List<Double> temperatures, Progress progress, BooleanSupplier cancelled) {
        Map<Cycle, String> refused = new LinkedHashMap<>();
        List<Item> items = new ArrayList<>();
        for (Cycle cycle : Cycle.all()) {
            if (cycle.traits().turbines()) {
                try {
                    items.addAll(items(cycle, sibling(concept, cycle), temperatures));
                } catch (InvalidInput e) {
                    refused.put(cycle, e.getMessage());
                }
            }
        }
        List<Optional<List<CycleReach.Point>>> found = Parallel.map(
                items,
                Item::title,
                item -> cancelled.getAsBoolean() ? Optional.empty() : Optional.of(points(item)),
                progress);
        List<CycleReach.Line> lines = new ArrayList<>();
        for (Cycle cycle : Cycle.all()) {
            if (refused.containsKey(cycle)) {
                lines.add(new CycleReach.Line(cycle, basis(cycle), List.of(), refused.get(cycle)));
            } else if (cycle.traits().turbines()) {
                lines.add(line(cycle, items, found));
            }
        }
        return new CycleReach(concept, temperatures, lines, found.stream().allMatch(Optional::isPresent));
    }

    private Concept sibling(Concept concept, Cycle cycle) {
        Concept same = concept.cycle().equals(cycle) ? concept : runs.withCycle(concept, cycle);
        return exhaustLoss.isPresent() && cycle.traits().dumps()
                ? runs.reread(same, Map.of(ConceptReader.EXHAUST_LOSS, Double.toString(exhaustLoss.getAsDouble())))
                : same;
    }

    private static CycleReach.Basis basis(Cycle cycle) {
        if (cycle.traits().livesOnJacketHeat()) {
            return CycleReach.Basis.JACKET;
        }
        return cycle.traits().burners().contains(Burner.DECOMPOSITION)
                ? CycleReach.Basis.DECOMPOSITION
                : CycleReach.Basis.CHOSEN;
    }

    /** The temperatures asked for as far as a turbine stands them, and the end of what it stands if that comes before. */
    private static List<Item> items(Cycle cycle, Concept concept, List<Double> temperatures) {
        if (basis(cycle) != CycleReach.Basis.CHOSEN) {
            return List.of(new Item(cycle, concept, OptionalDouble.empty()));
        }
        double highest = concept.hottestTurbineLimit().orElseThrow();
        List<Item> items = new ArrayList<>();
        boolean beyond = false;
        for (double temperature : temperatures) {
            if (temperature <= highest) {
                items.add(new Item(cycle, concept, OptionalDouble.of(temperature)));
            } else {
                beyond = true;
            }
        }
        if (beyond && !(items.size() > 0 && temperatures.contains(highest))) {
            items.add(new Item(cycle, concept, OptionalDouble.of(highest)));
        }
        return items;
    }

    private List<CycleReach.Point> points(Item item) {
        try {
            double temperature = item.temperature()
                    .orElseGet(() -> item.concept().hottestTurbineLimit().orElseThrow());
            Concept concept = item.concept().withTurbineTemperature(temperature);
            LimitResult reach = runs.study().limit(item.concept(), temperature);
            CycleReach.Point end = CycleReach.Point.reached(item.temperature(), reach);
            List<CycleReach.Point> points = new ArrayList<>();
            if (basis(item.cycle()) == CycleReach.Basis.JACKET && end.balance().isPresent()) {
                double highest = end.balance().orElseThrow().engine().chamberPressure();
                SHARES.forEach(share -> below(concept, share * highest).ifPresent(points::add));
            }
            points.add(end);
            return points;
        } catch (PenstockException e) {
            return List.of(new CycleReach.Point(item.temperature(), Optional.empty(), "", e.getMessage()));
        }
    }

    /** A point of a jacket's line below the reach; left out where the engine does not close there. */
    private Optional<CycleReach.Point> below(Concept concept, double pressure) {
        try {
            return Optional.of(new CycleReach.Point(
                    OptionalDouble.empty(),
                    Optional.of(runs.study().balance(concept.withChamberPressure(pressure))),
                    "",
                    "below the highest pressure within the limits"));
        } catch (PenstockException e) {
            return Optional.empty();
        }
    }

    private static CycleReach.Line line(Cycle cycle, List<Item> items, List<Optional<List<CycleReach.Point>>> found) {
        List<CycleReach.Point> points = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).cycle().equals(cycle)) {
                found.get(i).ifPresent(points::addAll);
            }
        }
        boolean any = points.stream().anyMatch(p -> p.balance().isPresent());
        String failure = any
                ? ""
                : points.stream().map(CycleReach.Point::why).findFirst().orElse("not tried");
        return new CycleReach.Line(cycle, basis(cycle), points, failure);
    }
}
