package dev.penstock.numerics.optimum;

import dev.penstock.numerics.LowDiscrepancy;
import dev.penstock.numerics.sampling.Streams;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * Searches from several places: a first design over the whole cube, from whose best the starts begin; each is an evolution
 * strategy, finished where it is smooth. Names are not searched but tried: each of their combinations has a start of its own.
 * The same seed gives the same bits on any number of threads.
 */
public final class MultiStart {

    /** More combinations of names than that are no case for starts of their own. */
    public static final int MOST_COMBINATIONS = 64;

    private static final int DESIGN = 8;
    private static final int ROUNDS = 3;
    /** What a smooth finish can be expected to mend; a programme without a feasible place in reach takes minutes to give up. */
    private static final double NEAR = 0.01;

    private final Problem problem;
    private final PlaceGrid grid;
    private final List<Integer> continuous;
    private final List<Integer> free = new ArrayList<>();
    private final Workers workers;

    /**
     * @param problem what is searched
     * @param workers run the starts
     */
    public MultiStart(Problem problem, Workers workers) {
        this.problem = problem;
        this.workers = workers;
        this.grid = new PlaceGrid(problem);
        this.continuous = grid.continuous();
        free.addAll(continuous);
        free.addAll(grid.whole());
        free.sort(Comparator.naturalOrder());
    }

    /**
     * @param from a place to begin with, beside those of the design
     * @param starts number of starts; at least one for each combination of names
     * @param evaluations places that each start tries at most
     * @param seed seed of the random numbers
     * @return the best, feasible if any place that was tried is
     * @throws CancellationException if it was stopped before anything was found
     */
    public Optimum search(Optional<double[]> from, int starts, int evaluations, long seed) {
        Streams streams = new Streams(seed);
        List<double[]> places = design(from, streams);
        Trial[] tried = new Trial[places.size()];
        boolean whole = workers.untilStopped(places.size(), i -> tried[i] = problem.at(places.get(i)));
        List<Trial> design = Arrays.stream(tried).filter(t -> t != null).toList();
        if (design.isEmpty()) {
            throw new CancellationException("stopped before anything was found");
        }
        Optional<Trial> best = best(design);
        if (free.isEmpty() || !whole) {
            List<Optimum.Start> each = design.stream()
                    .map(t -> new Optimum.Start(t.place(), t, 1, false, List.of(new Optimum.Step(1, t)), true))
                    .toList();
            return new Optimum(best.orElseThrow(), each, design.size(), whole);
        }
        Penalty penalty = Penalty.of(design);
        List<Trial> begin = begin(design, from.isPresent(), starts);
        Optimum.Start[] done = new Optimum.Start[begin.size()];
        workers.untilStopped(begin.size(), i -> done[i] = start(begin.get(i), penalty, evaluations, streams.of(1, i)));
        List<Optimum.Start> ended = Arrays.stream(done).filter(s -> s != null).toList();
        List<Trial> found = new ArrayList<>(design);
        ended.forEach(s -> found.add(s.best()));
        int all = design.size()
                + ended.stream().mapToInt(Optimum.Start::evaluations).sum();
        boolean complete = ended.size() == done.length && ended.stream().allMatch(Optimum.Start::complete);
        return new Optimum(best(found).orElseThrow(), ended, all, complete);
    }

    private List<double[]> design(Optional<double[]> from, Streams streams) {
        List<double[]> combinations = grid.combinations(MOST_COMBINATIONS);
        if (combinations.size() > MOST_COMBINATIONS) {
            throw new IllegalArgumentException("more than " + MOST_COMBINATIONS + " combinations of names");
        }
        List<double[]> places = new ArrayList<>();
        from.ifPresent(p -> places.add(settled(p)));
        int n = problem.dimensions();
        int each = free.isEmpty() ? 1 : Math.max(4, (DESIGN * free.size() + 8) / combinations.size());
        List<double[]> points = LowDiscrepancy.shifted(n, each * combinations.size(), streams.of(0));
        List<Integer> names = grid.named();
        for (int k = 0; k < points.size(); k++) {
            double[] place = points.get(k);
            double[] combination = combinations.get(k % combinations.size());
            for (int j = 0; j < names.size(); j++) {
                place[names.get(j)] = combination[j];
            }
            places.add(settled(place));
        }
        return places;
    }

    private double[] settled(double[] place) {
        double[] settled = place.clone();
        grid.settle(settled);
        return settled;
    }

    /** Where starts begin: the place given, the best of each combination of names, then the best that lie apart. */
    private List<Trial> begin(List<Trial> design, boolean given, int starts) {
        List<Trial> sorted = new ArrayList<>(design);
        sorted.sort((a, b) -> a.betterThan(b) ? -1 : b.betterThan(a) ? 1 : 0);
        List<Trial> begin = new ArrayList<>();
        if (given) {
            begin.add(design.get(0));
        }
        for (double[] names : grid.combinations(MOST_COMBINATIONS)) {
            if (names.length > 0 && begin.stream().noneMatch(t -> has(t, names))) {
                sorted.stream().filter(t -> has(t, names)).findFirst().ifPresent(begin::add);
            }
        }
        double apart = 0.25 * Math.sqrt(free.size());
        while (begin.size() < starts && begin.size() < sorted.size()) {
            double far = apart;
            Optional<Trial> next = sorted.stream()
                    .filter(t -> begin.stream().noneMatch(b -> b == t || distance(b, t) < far))
                    .findFirst();
            next.ifPresent(begin::add);
            apart = next.isPresent() ? apart : 0.5 * apart;
            if (apart < 1e-6) {
                break;
            }
        }
        return begin;
    }

    private boolean has(Trial trial, double[] names) {
        List<Integer> which = grid.named();
        return IntStream.range(0, names.length).allMatch(j -> trial.place()[which.get(j)] == names[j]);
    }

    private double distance(Trial a, Trial b) {
        return Math.sqrt(free.stream()
                .mapToDouble(i -> Math.pow(a.place()[i] - b.place()[i], 2))
                .sum());
    }

    private static Optional<Trial> best(List<Trial> trials) {
        Trial best = null;
        for (Trial trial : trials) {
            best = best == null || trial.betterThan(best) ? trial : best;
        }
        return Optional.ofNullable(best);
    }

    private Optimum.Start start(Trial from, Penalty penalty, int evaluations, SplittableRandom random) {
        SearchState state = new SearchState(problem, grid);
        state.offer(from);
        boolean complete = true;
        boolean smooth = false;
        try {
            new EvolutionSearch(state, penalty, free).run(from.place(), random.nextLong(), evaluations);
            if (!state.best().feasible() && state.best().answered()) {
                new EvolutionSearch(state, penalty.heavier(), free)
                        .run(state.best().place(), random.nextLong(), evaluations / 2);
            }
            smooth = finish(state, penalty);
            for (int round = 0; round < ROUNDS && neighbours(state); round++) {
                smooth |= finish(state, penalty);
            }
        } catch (CancellationException e) {
            complete = false;
        }
        return new Optimum.Start(from.place(), state.best(), state.evaluations(), smooth, state.steps(), complete);
    }

    /** Whether the smooth finish improved anything. */
    private boolean finish(SearchState state, Penalty penalty) {
        if (continuous.isEmpty() || !(state.best().violation() < NEAR)) {
            return false;
        }
        Trial before = state.best();
        new SmoothFinish(state, penalty, continuous, before.place()).run();
        return state.best() != before;
    }

    /** Whether a whole number one up or down improves anything. */
    private boolean neighbours(SearchState state) {
        Trial before = state.best();
        for (int i : grid.whole()) {
            int value = grid.value(i, before.place()[i]);
            for (int step : new int[] {-1, 1}) {
                if (value + step >= 0 && value + step < problem.count(i)) {
                    double[] place = before.place().clone();
                    place[i] = grid.middle(i, value + step);
                    state.at(place);
                }
            }
        }
        return state.best() != before;
    }
}
