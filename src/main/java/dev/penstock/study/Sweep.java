package dev.penstock.study;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.input.InputFile;
import dev.penstock.numerics.Cancellation;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

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
     * @param band how far its figures may spread, if that was asked for
     */
    public record Point(
            List<String> values, Optional<EngineBalance> balance, Optional<String> failure, Optional<SweepBand> band) {

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

        /** @return whether any combination has a band */
        public boolean banded() {
            return points.stream().anyMatch(p -> p.band().isPresent());
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
        return run(file, changes, axes, 0, progress, cancelled);
    }

    /**
     * Sweeps, and samples the uncertain inputs about every combination.
     *
     * @param file concept file
     * @param changes values by dotted path that replace or add to what the file says
     * @param axes inputs to vary
     * @param samples engines to sample at each combination; 0 for none, otherwise 2 or more
     * @param progress told of each balance that is done, samples included
     * @param cancelled asked before each balance; once it says yes, no more are begun
     * @return every combination tried; one that was cancelled on the way has no band
     * @throws InvalidInput if the file cannot be used, an axis names no input of it, or there is too much to balance
     */
    public Result run(
            Path file,
            Map<String, String> changes,
            List<Axis> axes,
            int samples,
            Progress progress,
            BooleanSupplier cancelled) {
        return run(InputFile.read(file), changes, axes, samples, progress, cancelled);
    }

    /**
     * The same of a text at hand.
     *
     * @param file text of a concept, read without changes
     * @param changes values by dotted path that replace or add to what the text says
     * @param axes inputs to vary
     * @param samples engines to sample at each combination; 0 for none, otherwise 2 or more
     * @param progress told of each balance that is done, samples included
     * @param cancelled asked before each balance; once it says yes, no more are begun
     * @return every combination tried; one that was cancelled on the way has no band
     * @throws InvalidInput if the text cannot be used, an axis names no input of it, or there is too much to balance
     */
    public Result run(
            InputFile file,
            Map<String, String> changes,
            List<Axis> axes,
            int samples,
            Progress progress,
            BooleanSupplier cancelled) {
        if (samples < 0 || samples == 1) {
            throw new InvalidInput("", "samples", Integer.toString(samples), "0, or 2 and more");
        }
        List<List<String>> grid = grid(axes, samples);
        Concept first = runs.read(file, with(changes, axes, grid.get(0)));
        Work work = new Work(file, changes, axes, samples, new Tally(progress, grid.size() * (1 + samples)), cancelled);
        List<Optional<Point>> points = Parallel.map(grid, values -> "", work::point, Progress.NONE);
        List<Point> tried = points.stream().flatMap(Optional::stream).toList();
        return new Result(first.name(), axes, tried, tried.size() == grid.size());
    }

    /** What all combinations share. */
    private final class Work {

        private final InputFile file;
        private final Map<String, String> changes;
        private final List<Axis> axes;
        private final int samples;
        private final Tally tally;
        private final BooleanSupplier cancelled;
        private final BandSampler sampler;

        Work(
                InputFile file,
                Map<String, String> changes,
                List<Axis> axes,
                int samples,
                Tally tally,
                BooleanSupplier cancelled) {
            this.file = file;
            this.changes = changes;
            this.axes = axes;
            this.samples = samples;
            this.tally = tally;
            this.cancelled = cancelled;
            this.sampler =
                    new BandSampler(runs, samples, axes.stream().map(Axis::path).collect(Collectors.toSet()));
        }

        Optional<Point> point(List<String> values) {
            if (cancelled.getAsBoolean()) {
                return Optional.empty();
            }
            try {
                return Cancellation.during(cancelled, () -> balanced(values));
            } catch (CancellationException e) {
                return Optional.empty();
            }
        }

        private Optional<Point> balanced(List<String> values) {
            String name = String.join(", ", values);
            try {
                Concept concept = runs.read(file, with(changes, axes, values));
                EngineBalance balance = runs.study().balance(concept);
                tally.add(1, name);
                Optional<SweepBand> band = samples == 0
                        ? Optional.empty()
                        : sampler.band(concept, balance, runs.study(), () -> tally.add(1, name), cancelled);
                return Optional.of(new Point(values, Optional.of(balance), Optional.empty(), band));
            } catch (PenstockException e) {
                tally.add(1 + samples, name);
                return Optional.of(new Point(values, Optional.empty(), Optional.of(e.getMessage()), Optional.empty()));
            }
        }
    }

    /** Counts balances over all threads. */
    private static final class Tally {

        private final Progress progress;
        private final int of;
        private int done;

        Tally(Progress progress, int of) {
            this.progress = progress;
            this.of = of;
        }

        synchronized void add(int balances, String what) {
            done += balances;
            progress.done(done, of, what);
        }
    }

    private static List<List<String>> grid(List<Axis> axes, int samples) {
        long count = 1 + samples;
        for (Axis axis : axes) {
            count *= axis.values().size();
            if (count > MOST_POINTS) {
                throw new InvalidInput(
                        "",
                        "--vary",
                        "more than " + MOST_POINTS + " combinations" + (samples == 0 ? "" : ", samples counted"),
                        "vary fewer inputs or give lower counts, of samples too");
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
