package dev.penstock.study;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.cycles.trail.FeedFigures;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.Trail;
import dev.penstock.vehicle.stage.VehicleFigures;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Asks the calculation itself what its figures depend on: moves each numeric input of a concept or vehicle by 2 %, balances
 * or sizes again, and holds what has moved against what the trail says.
 */
final class TrailPerturbation {

    private static final double MOVE = 0.02;

    /** Relative change of a figure over that of the input, from which the trail must know of it (-). */
    private static final double FELT = 0.05;

    /** What is left of equations that close: rounding, not figures. */
    private static final List<String> EVIDENCE = List.of("residual", "audit", "closing.loop");

    /** Known by a number in the order of the arrangement. */
    private static final List<String> NUMBERED = List.of("stations.", "pressure_ladder.");

    /** A figure that depends on an input without saying so. */
    record Missing(String figure, String input, double elasticity) {}

    /**
     * @param pairs pairs of figure and input with an elasticity above the bound
     * @param missing those that the trail does not know of
     * @param unmoved inputs that could not be moved, with the reason
     */
    record Result(int pairs, List<Missing> missing, Map<String, String> unmoved) {

        /** @return the missing pairs, gathered by input */
        String text() {
            Map<String, List<String>> figures = new TreeMap<>();
            missing.forEach(m -> figures.computeIfAbsent(m.input(), x -> new ArrayList<>())
                    .add(String.format("%s (%.2g)", m.figure(), m.elasticity())));
            StringBuilder text = new StringBuilder(missing.size() + " of " + pairs + " pairs missing");
            figures.forEach((input, list) -> text.append("\n  ")
                    .append(input)
                    .append(": ")
                    .append(list.size())
                    .append("\n      ")
                    .append(String.join("\n      ", list)));
            unmoved.forEach((input, why) ->
                    text.append("\n  not moved: ").append(input).append(": ").append(why));
            return text.toString();
        }
    }

    private final ConceptReader reader;
    private final EngineStudy study;
    private final VehicleRuns vehicles;

    TrailPerturbation(FluidLibrary fluids, Path home) {
        this.reader = new ConceptReader(fluids);
        this.study = EngineStudy.open(home);
        this.vehicles = new VehicleRuns(new EngineRuns(home, fluids));
    }

    /** Moves one in {@code every} numeric inputs, from the one numbered {@code first} on. */
    Result of(Concept concept, int every, int first) {
        return of(
                concept.document().inputs(),
                "concept.",
                changes -> run(changes.isEmpty() ? concept : reader.reread(concept, changes)),
                every,
                first);
    }

    /** Moves one in {@code every} numeric inputs of a vehicle file, from the one numbered {@code first} on. */
    Result of(Path vehicle, int every, int first) {
        List<InputValue> inputs =
                vehicles.size(vehicle, Map.of(), Progress.NONE).plan().inputs();
        return of(
                inputs,
                "plan.",
                changes -> new Run(VehicleFigures.trail(vehicles.size(vehicle, changes, Progress.NONE)), List.of()),
                every,
                first);
    }

    private Result of(
            List<InputValue> inputs, String root, Function<Map<String, String>, Run> runs, int every, int first) {
        Run still = runs.apply(Map.of());
        Trail trail = still.trail();
        Map<String, List<String>> users = users(trail);
        List<Missing> missing = new ArrayList<>();
        Map<String, String> unmoved = new TreeMap<>();
        int pairs = 0;
        int number = 0;
        for (InputValue input : inputs) {
            String path = root + input.key();
            if (!trail.has(path) || trail.entry(path).orElseThrow().value() == 0) {
                continue;
            }
            if (number++ % every != first % every) {
                continue;
            }
            List<String> reasons = new ArrayList<>();
            double value = trail.entry(path).orElseThrow().value();
            Optional<Run> moved = moved(runs, input, value, reasons);
            if (moved.isEmpty()) {
                unmoved.put(path, String.join("; ", reasons));
                continue;
            }
            Set<String> knowing = knowing(users, path);
            for (Trail.Entry entry : trail.entries()) {
                double elasticity = elasticity(entry, still, moved.get());
                if (elasticity > FELT) {
                    pairs++;
                    if (!knowing.contains(entry.path())) {
                        missing.add(new Missing(entry.path(), path, elasticity));
                    }
                }
            }
        }
        return new Result(pairs, missing, unmoved);
    }

    /** A trail with the names of its stations: where a way appears or goes, numbers mean other places. */
    private record Run(Trail trail, List<String> stations) {}

    private Run run(Concept concept) {
        EngineBalance balance = study.balance(concept);
        Trail trail = BalanceTrail.of(balance);
        study.pressureFeed(balance).ifPresent(feed -> FeedFigures.record(balance, feed, trail));
        return new Run(trail, balance.stations().stream().map(Station::name).toList());
    }

    /** The trail with an input moved up or, where that is not allowed or does not close, down. */
    private static Optional<Run> moved(
            Function<Map<String, String>, Run> runs, InputValue input, double value, List<String> reasons) {
        for (double factor : List.of(1 + MOVE, 1 - MOVE)) {
            try {
                Map<String, String> change = Map.of(input.key(), input.written(value * factor));
                return Optional.of(runs.apply(change));
            } catch (PenstockException e) {
                reasons.add(e.getMessage());
            }
        }
        return Optional.empty();
    }

    private static double elasticity(Trail.Entry entry, Run still, Run run) {
        Trail moved = run.trail();
        if (NUMBERED.stream().anyMatch(entry.path()::startsWith)
                && !still.stations().equals(run.stations())) {
            return 0;
        }
        boolean evidence = EVIDENCE.stream().anyMatch(entry.path()::startsWith);
        if (evidence || entry.value() == 0 || !moved.has(entry.path())) {
            return 0;
        }
        double after = moved.entry(entry.path()).orElseThrow().value();
        return Math.abs(after / entry.value() - 1) / MOVE;
    }

    /** The values that were made with each value at first hand. */
    private static Map<String, List<String>> users(Trail trail) {
        Map<String, List<String>> users = new HashMap<>();
        for (Trail.Entry entry : trail.entries()) {
            entry.inputs().forEach(input -> users.computeIfAbsent(input, i -> new ArrayList<>())
                    .add(entry.path()));
        }
        return users;
    }

    /** Everything that was made with a value, directly or on the way, itself included. */
    private static Set<String> knowing(Map<String, List<String>> users, String path) {
        Set<String> found = new HashSet<>(List.of(path));
        Deque<String> todo = new ArrayDeque<>(found);
        while (!todo.isEmpty()) {
            for (String user : users.getOrDefault(todo.pop(), List.of())) {
                if (found.add(user)) {
                    todo.add(user);
                }
            }
        }
        return found;
    }

    /** Prints what is missing for each concept or vehicle file named. */
    public static void main(String[] files) {
        FluidLibrary fluids = FluidLibrary.open();
        for (String file : files) {
            long start = System.nanoTime();
            TrailPerturbation perturbation = new TrailPerturbation(fluids, Path.of("."));
            Result result = file.contains("vehicles")
                    ? perturbation.of(Path.of(file), 1, 0)
                    : perturbation.of(new ConceptReader(fluids).read(Path.of(file)), 1, 0);
            System.out.printf("%s: %s%n  %.1f s%n", file, result.text(), (System.nanoTime() - start) / 1e9);
        }
    }
}
