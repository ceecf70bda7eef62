package dev.penstock.numerics.optimum;

import dev.penstock.numerics.LowDiscrepancy;
import dev.penstock.numerics.sampling.Streams;
import dev.penstock.numerics.sampling.Workers;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;

/**
 * The non-dominated sorting genetic algorithm II: places are ranked by what dominates them, those with room among their like
 * live on; children by simulated binary crossover and polynomial mutation. Every feasible place that nothing dominates is
 * kept aside. The same seed gives the same bits on any number of threads.
 */
public final class GeneticFrontier {

    public static final ModelCard CARD = new ModelCard(
            "numerics.genetic-frontier",
            "Non-dominated sorting genetic algorithm with constraint domination",
            "rank by fronts, then by crowding distance; simulated binary crossover (eta 15), polynomial mutation (eta 20)",
            "two or three objectives, some tens of inputs; names are exchanged whole",
            "hypervolume is shown as it grows; a front may lack parts that few places lead to",
            List.of("deb-2002"));

    private static final double CROSSOVER = 0.9;
    private static final double CROSSOVER_INDEX = 15;
    private static final double MUTATION_INDEX = 20;
    private static final int MOST_KEPT = 200;

    private final Problem problem;
    private final PlaceGrid grid;
    private final Workers workers;

    /**
     * @param problem what is searched
     * @param workers ask it
     */
    public GeneticFrontier(Problem problem, Workers workers) {
        this.problem = problem;
        this.grid = new PlaceGrid(problem);
        this.workers = workers;
    }

    /**
     * @param from a place to begin with, beside those that fill the cube
     * @param population places of a generation, even
     * @param generations generations after the first
     * @param seed seed of the random numbers
     * @return the frontier
     * @throws CancellationException if it was stopped before the first generation was done
     */
    public Frontier search(Optional<double[]> from, int population, int generations, long seed) {
        Streams streams = new Streams(seed);
        List<Trial> parents = evaluated(first(from, population, streams.of(0)))
                .orElseThrow(() -> new CancellationException("stopped before the first generation was done"));
        int evaluations = parents.size();
        List<Trial> kept = keep(List.of(), parents);
        List<Double> growth = new ArrayList<>();
        double[] reference = reference(kept, parents);
        growth.add(volume(kept, reference));
        boolean complete = true;
        for (int g = 1; g <= generations && complete; g++) {
            Optional<List<Trial>> children = evaluated(children(parents, streams.of(1, g)));
            complete = children.isPresent();
            if (complete) {
                evaluations += children.get().size();
                if (kept.isEmpty()) {
                    kept = keep(kept, children.get());
                    reference = reference(kept, children.get());
                } else {
                    kept = keep(kept, children.get());
                }
                growth.add(volume(kept, reference));
                List<Trial> all = new ArrayList<>(parents);
                all.addAll(children.get());
                parents = survivors(all, population);
            }
        }
        return new Frontier(kept, reference, growth, evaluations, complete);
    }

    private List<double[]> first(Optional<double[]> from, int population, SplittableRandom random) {
        int n = problem.dimensions();
        List<double[]> places = new ArrayList<>();
        from.ifPresent(p -> places.add(p.clone()));
        places.addAll(LowDiscrepancy.shifted(n, population - places.size(), random));
        places.forEach(grid::settle);
        return places;
    }

    /** All of a generation; empty if it was stopped on the way. */
    private Optional<List<Trial>> evaluated(List<double[]> places) {
        Trial[] trials = new Trial[places.size()];
        boolean whole = workers.untilStopped(places.size(), i -> trials[i] = problem.at(places.get(i)));
        return whole ? Optional.of(List.of(trials)) : Optional.empty();
    }

    /** Feasible places that nothing dominates, of those kept and some new ones; those with least room give way. */
    private static List<Trial> keep(List<Trial> kept, List<Trial> more) {
        List<Trial> all = new ArrayList<>(kept);
        for (Trial trial : more) {
            if (trial.feasible()
                    && all.stream()
                            .noneMatch(t -> Dominance.dominates(t, trial)
                                    || Arrays.equals(t.objectives(), trial.objectives()))) {
                all.removeIf(t -> Dominance.dominates(trial, t));
                all.add(trial);
            }
        }
        while (all.size() > MOST_KEPT) {
            List<Integer> front = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                front.add(i);
            }
            double[] room = Dominance.room(all, front);
            int least = 0;
            for (int i = 1; i < room.length; i++) {
                least = room[i] < room[least] ? i : least;
            }
            all.remove(least);
        }
        all.sort(
                Comparator.comparingDouble((Trial t) -> t.objectives()[0]).thenComparingDouble(t -> t.objectives()[1]));
        return all;
    }

    private static double[] reference(List<Trial> kept, List<Trial> generation) {
        if (kept.isEmpty()) {
            return new double[generation.get(0).objectives().length];
        }
        double[] worst = kept.get(0).objectives().clone();
        generation.stream().filter(Trial::feasible).forEach(t -> {
            for (int k = 0; k < worst.length; k++) {
                worst[k] = Math.max(worst[k], t.objectives()[k]);
            }
        });
        return worst;
    }

    private static double volume(List<Trial> kept, double[] reference) {
        return Hypervolume.of(kept.stream().map(Trial::objectives).toList(), reference);
    }

    /** The best half by front and room. */
    private static List<Trial> survivors(List<Trial> all, int population) {
        List<Trial> next = new ArrayList<>();
        for (List<Integer> front : Dominance.fronts(all)) {
            if (next.size() + front.size() <= population) {
                front.forEach(i -> next.add(all.get(i)));
                continue;
            }
            double[] room = Dominance.room(all, front);
            Integer[] order = new Integer[front.size()];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, Comparator.comparingDouble(i -> -room[i]));
            for (int i = 0; next.size() < population; i++) {
                next.add(all.get(front.get(order[i])));
            }
            break;
        }
        return next;
    }

    private List<double[]> children(List<Trial> parents, SplittableRandom random) {
        int[] rank = new int[parents.size()];
        double[] room = new double[parents.size()];
        List<List<Integer>> fronts = Dominance.fronts(parents);
        for (int f = 0; f < fronts.size(); f++) {
            double[] own = Dominance.room(parents, fronts.get(f));
            for (int i = 0; i < own.length; i++) {
                rank[fronts.get(f).get(i)] = f;
                room[fronts.get(f).get(i)] = own[i];
            }
        }
        List<double[]> children = new ArrayList<>();
        while (children.size() < parents.size()) {
            double[] a = parents.get(chosen(rank, room, random)).place().clone();
            double[] b = parents.get(chosen(rank, room, random)).place().clone();
            if (random.nextDouble() < CROSSOVER) {
                cross(a, b, random);
            }
            for (double[] child : List.of(a, b)) {
                mutate(child, random);
                grid.settle(child);
                if (children.size() < parents.size()) {
                    children.add(child);
                }
            }
        }
        return children;
    }

    /** The better of two taken at random. */
    private static int chosen(int[] rank, double[] room, SplittableRandom random) {
        int a = random.nextInt(rank.length);
        int b = random.nextInt(rank.length);
        boolean first = rank[a] < rank[b] || rank[a] == rank[b] && room[a] > room[b];
        return first ? a : b;
    }

    private void cross(double[] a, double[] b, SplittableRandom random) {
        for (int i = 0; i < a.length; i++) {
            boolean take = random.nextBoolean();
            double u = random.nextDouble();
            if (!take) {
                continue;
            }
            if (problem.count(i) > 0 && problem.named(i)) {
                double own = a[i];
                a[i] = b[i];
                b[i] = own;
                continue;
            }
            double spread = u <= 0.5
                    ? Math.pow(2 * u, 1 / (CROSSOVER_INDEX + 1))
                    : Math.pow(1 / (2 * (1 - u)), 1 / (CROSSOVER_INDEX + 1));
            double middle = 0.5 * (a[i] + b[i]);
            double half = 0.5 * spread * (b[i] - a[i]);
            a[i] = Math.max(0, Math.min(1, middle - half));
            b[i] = Math.max(0, Math.min(1, middle + half));
        }
    }

    private void mutate(double[] place, SplittableRandom random) {
        double often = 1.0 / place.length;
        for (int i = 0; i < place.length; i++) {
            boolean take = random.nextDouble() < often;
            double u = random.nextDouble();
            if (!take) {
                continue;
            }
            if (problem.count(i) > 0) {
                place[i] = u;
                continue;
            }
            double power = 1 / (MUTATION_INDEX + 1);
            double x = place[i];
            place[i] = u < 0.5
                    ? x + Math.pow(2 * u + (1 - 2 * u) * Math.pow(1 - x, MUTATION_INDEX + 1), power) - 1
                    : x + 1 - Math.pow(2 * (1 - u) + (2 * u - 1) * Math.pow(x, MUTATION_INDEX + 1), power);
            place[i] = Math.max(0, Math.min(1, place[i]));
        }
    }
}
