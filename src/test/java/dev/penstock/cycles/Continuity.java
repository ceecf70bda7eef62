package dev.penstock.cycles;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** How evenly the headline figures of an engine follow small steps of its chamber pressure, each solved from its own start. */
final class Continuity {

    static final double STEP = 1e-3;

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

    private Continuity() {}

    /**
     * @param concept where the steps begin
     * @param steps how many steps of 0.1 % upwards; fewer where the engine stops closing
     * @return the largest step of every figure over its median, largest first
     */
    static List<Jump> of(Concept concept, int steps) {
        List<double[]> rows = new ArrayList<>();
        List<Double> pressures = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double pressure = concept.chamberPressure() * Math.pow(1 + STEP, i);
            try {
                EngineBalance balance = Concepts.STUDY.balance(concept.withChamberPressure(pressure));
                rows.add(FIGURES.values().stream()
                        .mapToDouble(f -> f.applyAsDouble(balance))
                        .toArray());
                pressures.add(pressure);
            } catch (PenstockException e) {
                break;
            }
        }
        List<Jump> worst = new ArrayList<>();
        int figure = 0;
        for (String name : FIGURES.keySet()) {
            if (rows.size() > 2) {
                worst.add(largest(name, figure, rows, pressures));
            }
            figure++;
        }
        worst.sort((a, b) -> Double.compare(b.overMedian(), a.overMedian()));
        return worst;
    }

    private static Jump largest(String name, int figure, List<double[]> rows, List<Double> pressures) {
        double[] sizes = new double[rows.size() - 1];
        int at = 0;
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] = Math.abs(rows.get(i + 1)[figure] - rows.get(i)[figure]);
            at = sizes[i] > sizes[at] ? i : at;
        }
        double largest = sizes[at];
        Arrays.sort(sizes);
        double median = Math.max(
                sizes[sizes.length / 2], Math.max(Double.MIN_NORMAL, ROUND_OFF * Math.abs(rows.get(0)[figure])));
        return new Jump(name, pressures.get(at), rows.get(at)[figure], rows.get(at + 1)[figure], largest / median);
    }
}
