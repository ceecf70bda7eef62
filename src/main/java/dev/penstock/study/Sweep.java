package dev.penstock.study;

import dev.penstock.cycles.Concept;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.cycles.EngineStudy;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Balances a concept at every combination of some inputs, over all processors. */
public final class Sweep {

    /** More combinations than a workstation balances while somebody waits. */
    public static final int MOST_POINTS = 20_000;

    private final EngineRuns runs;

    /** @param runs reads and balances concepts */
    public Sweep(EngineRuns runs) {
        this.runs = runs;
    }

    /**
     * One combination.
     *
     * @param values value of each axis, in their order
     * @param balance balanced engine, if there is one
     * @param failure one sentence on why there is none
     */
    public record Point(List<String> values, Optional<EngineBalance> balance, Optional<String> failure) {

        public Point {
            values = List.copyOf(values);
        }
    }

    /**
     * What a sweep has found.
     *
     * @param name name of the concept
     * @param axes inputs that were varied
     * @param points combinations that were tried; the last axis moves fastest
     * @param complete whether all combinations were tried
     */
    public record Result(String name, List<Axis> axes, List<Point> points, boolean complete) {

        public Result {
            axes = List.copyOf(axes);
            points = List.copyOf(points);
        }
    }

    /**
     * @param file concept file
     * @param changes values by dotted path that replace or add to what the file says
     * @param axes inputs to vary
     * @param progress told of each combination that is done
     * @param cancelled asked before each combination; once it says yes, no more are begun
     * @return every combination tried
     * @throws InvalidInput if the file cannot be used, an axis names no input of it, or there are too many combinations
     */
    public Result run(
            Path file, Map<String, String> changes, List<Axis> axes, Progress progress, BooleanSupplier cancelled) {
        List<List<String>> grid = grid(axes);
        Concept first = runs.read(file, with(changes, axes, grid.get(0)));
        ThreadLocal<EngineStudy> study = ThreadLocal.withInitial(runs::study);
        List<Optional<Point>> points = Parallel.map(
                grid,
                values -> String.join(", ", values),
                values -> cancelled.getAsBoolean()
                        ? Optional.empty()
                        : Optional.of(point(file, with(changes, axes, values), values, study)),
                progress);
        List<Point> tried = points.stream().flatMap(Optional::stream).toList();
        return new Result(first.name(), axes, tried, tried.size() == grid.size());
    }

    private Point point(Path file, Map<String, String> changes, List<String> values, ThreadLocal<EngineStudy> study) {
        try {
            Concept concept = runs.read(file, changes);
            return new Point(values, Optional.of(study.get().balance(concept)), Optional.empty());
        } catch (PenstockException e) {
            return new Point(values, Optional.empty(), Optional.of(e.getMessage()));
        }
    }

    private static List<List<String>> grid(List<Axis> axes) {
        long count = 1;
        for (Axis axis : axes) {
            count *= axis.values().size();
            if (count > MOST_POINTS) {
                throw new InvalidInput(
                        "",
                        "--vary",
                        "more than " + MOST_POINTS + " combinations",
                        "vary fewer inputs or give lower counts");
            }
        }
        List<List<String>> grid = List.of(List.of());
        for (Axis axis : axes) {
            List<List<String>> longer = new ArrayList<>();
            for (List<String> values : grid) {
                for (String value : axis.values()) {
                    List<String> more = new ArrayList<>(values);
                    more.add(value);
                    longer.add(more);
                }
            }
            grid = longer;
        }
        return grid;
    }

    private static Map<String, String> with(Map<String, String> changes, List<Axis> axes, List<String> values) {
        Map<String, String> map = new LinkedHashMap<>(changes);
        for (int i = 0; i < axes.size(); i++) {
            map.put(axes.get(i).path(), values.get(i));
        }
        return map;
    }
}
