package dev.penstock.cycles;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * How evenly the headline figures of an engine follow small steps of its chamber pressure, each solved from its own start. Steps across
 * which a machine gets other stages, which the answer says, are counted apart: an engine of whole stages leaps there.
 */
final class Continuity {

    static final double STEP = 1e-3;

    /** A step between places that differs from its neighbours by more than this many median ones is walked in single steps (-). */
    private static final double SUSPICIOUS = 1;

    /** Below this share of the figure a median step is round-off, and no measure of a jump (-). */
    private static final double ROUND_OFF = 1e-6;

    private static final Map<String, ToDoubleFunction<EngineBalance>> FIGURES = new LinkedHashMap<>();

    static {
        FIGURES.put("vacuum impulse", b -> b.engine().vacuumIsp());
        FIGURES.put("mass flow", b -> b.engine().massFlow());
        FIGURES.put("throat diameter", b -> b.engine().throatDiameter());
        FIGURES.put(
                "heat load",
                b -> b.cooling().stream().mapToDouble(j -> j.heatLoad()).sum());
        FIGURES.put(
                "coolant pressure drop",
                b -> b.cooling().stream().mapToDouble(j -> j.pressureDrop()).sum());
        FIGURES.put("hottest wall", b -> b.cooling().stream()
                .mapToDouble(j -> j.peakWallTemperature())
                .max()
                .orElse(1));
    }

    /**
     * A step that stands out.
     *
     * @param figure figure
     * @param pressure chamber pressure before the step (Pa)
     * @param from value before it
     * @param to value behind it
     * @param overMedian size of the step over the median of its figure (-)
     */
    record Jump(String figure, double pressure, double from, double to, double overMedian) {}

    /**
     * How an engine follows the steps.
     *
     * @param jumps the largest step of every figure over its median, largest first; steps to other stages are left out
     * @param steps steps that closed
     * @param balances how many balances that took
     * @param switches how many steps went to other kinds or numbers of stages
     */
    record Walk(List<Jump> jumps, int steps, int balances, int switches) {}

    /** One balance: its pressure, figures and stages. */
    private record Place(double pressure, double[] figures, String stages) {}

    private final Concept concept;
    private final Map<Integer, Optional<Place>> places = new HashMap<>();

    private Continuity(Concept concept) {
        this.concept = concept;
    }

    /**
     * @param concept where the steps begin
     * @param steps how many steps of 0.1 % upwards; fewer where the engine stops closing
     */
    static Walk of(Concept concept, int steps) {
        return of(concept, steps, 1);
    }

    /**
     * Walks in strides, and in single steps only where a stride differs from its neighbours or leads to other stages: a step twenty times the
     * usual one makes its stride several times the usual one.
     *
     * @param concept where the steps begin
     * @param steps how many steps of 0.1 % upwards; fewer where the engine stops closing
     * @param stride steps at once where nothing happens
     */
    static Walk of(Concept concept, int steps, int stride) {
        return new Continuity(concept).walk(steps, stride);
    }

    private Walk walk(int steps, int stride) {
        List<Integer> at = new ArrayList<>();
        for (int i = 0; i <= steps && place(i).isPresent(); i += stride) {
            at.add(i);
        }
        List<Integer> fine = stride == 1 ? at : refined(at, steps, stride);
        List<Jump> worst = new ArrayList<>();
        int switches = 0;
        if (fine.size() > 2) {
            int figure = 0;
            for (String name : FIGURES.keySet()) {
                worst.add(largest(name, figure++, fine));
            }
            for (int k = 1; k < fine.size(); k++) {
                switches += switched(fine, k) ? 1 : 0;
            }
        }
        worst.sort((a, b) -> Double.compare(b.overMedian(), a.overMedian()));
        int last = fine.isEmpty() ? 0 : fine.get(fine.size() - 1);
        return new Walk(worst, last, places.size(), switches);
    }

    /** The places of the strides, with every step between where one of them is suspicious. */
    private List<Integer> refined(List<Integer> at, int steps, int stride) {
        List<Integer> all = new ArrayList<>(at.subList(0, Math.min(1, at.size())));
        for (int k = 1; k < at.size(); k++) {
            if (switched(at, k) || suspicious(at, k)) {
                for (int i = at.get(k - 1) + 1; i < at.get(k); i++) {
                    if (place(i).isPresent()) {
                        all.add(i);
                    }
                }
            }
            all.add(at.get(k));
        }
        int end = Math.min(steps + 1, last(at) + stride);
        for (int i = last(at) + 1; i < end && !at.isEmpty() && place(i).isPresent(); i++) {
            all.add(i);
        }
        return all;
    }

    private static int last(List<Integer> at) {
        return at.isEmpty() ? 0 : at.get(at.size() - 1);
    }

    private boolean suspicious(List<Integer> at, int k) {
        for (int figure = 0; figure < FIGURES.size(); figure++) {
            double[] sizes = sizes(figure, at);
            double here = step(figure, at, k);
            double before = k > 1 && !switched(at, k - 1) ? step(figure, at, k - 1) : here;
            double behind = k + 1 < at.size() && !switched(at, k + 1) ? step(figure, at, k + 1) : here;
            if (Math.abs(here - 0.5 * (before + behind)) > SUSPICIOUS * median(sizes, figure)) {
                return true;
            }
        }
        return false;
    }

    /** A balance; empty where the engine does not close. */
    private Optional<Place> place(int step) {
        return places.computeIfAbsent(step, i -> {
            double pressure = concept.chamberPressure() * Math.pow(1 + STEP, i);
            try {
                EngineBalance balance = Concepts.STUDY.balance(concept.withChamberPressure(pressure));
                double[] figures = FIGURES.values().stream()
                        .mapToDouble(f -> f.applyAsDouble(balance))
                        .toArray();
                return Optional.of(new Place(pressure, figures, stages(balance)));
            } catch (PenstockException e) {
                return Optional.empty();
            }
        });
    }

    private Place closed(int step) {
        return place(step).orElseThrow();
    }

    private boolean switched(List<Integer> at, int k) {
        return !closed(at.get(k)).stages().equals(closed(at.get(k - 1)).stages());
    }

    /** By how much a figure moves a step, on the way to a place. */
    private double step(int figure, List<Integer> at, int k) {
        return (closed(at.get(k)).figures()[figure] - closed(at.get(k - 1)).figures()[figure])
                / (at.get(k) - at.get(k - 1));
    }

    /** Sizes of all steps of a figure; nothing where the stages change. */
    private double[] sizes(int figure, List<Integer> at) {
        double[] sizes = new double[at.size() - 1];
        for (int k = 1; k < at.size(); k++) {
            sizes[k - 1] = switched(at, k) ? 0 : Math.abs(step(figure, at, k));
        }
        return sizes;
    }

    /** Median size, every step of a stride counted, never below round-off. */
    private double median(double[] sizes, int figure) {
        double[] sorted = sizes.clone();
        Arrays.sort(sorted);
        return Math.max(
                sorted[sorted.length / 2],
                Math.max(Double.MIN_NORMAL, ROUND_OFF * Math.abs(closed(0).figures()[figure])));
    }

    /** Kinds and numbers of stages, in the order of the machines. */
    private static String stages(EngineBalance balance) {
        StringBuilder all = new StringBuilder();
        balance.pumps()
                .forEach(p -> all.append(p.design().type()).append(p.design().stages()));
        balance.turbines()
                .forEach(t -> all.append(t.design().type()).append(t.design().stages()));
        return all.toString();
    }

    private Jump largest(String name, int figure, List<Integer> at) {
        double[] sizes = sizes(figure, at);
        int k = 0;
        for (int i = 0; i < sizes.length; i++) {
            k = sizes[i] > sizes[k] ? i : k;
        }
        List<Double> every = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            for (int j = at.get(i); j < at.get(i + 1); j++) {
                every.add(sizes[i]);
            }
        }
        double median = median(every.stream().mapToDouble(x -> x).toArray(), figure);
        Place from = closed(at.get(k));
        return new Jump(
                name,
                from.pressure(),
                from.figures()[figure],
                closed(at.get(k + 1)).figures()[figure],
                sizes[k] / median);
    }
}
