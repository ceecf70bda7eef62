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

/**
 * How evenly the headline figures of an engine follow small steps of its chamber pressure, each solved from its own start. Steps across
 * which a machine gets other stages, which the answer says, are counted apart: an engine of whole stages leaps there.
 */
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

    /**
     * How an engine follows the steps.
     *
     * @param jumps the largest step of every figure over its median, largest first; steps to other stages are left out
     * @param steps steps that closed
     * @param switches how many of them went to other kinds or numbers of stages
     */
    record Walk(List<Jump> jumps, int steps, int switches) {}

    private Continuity() {}

    /**
     * @param concept where the steps begin
     * @param steps how many steps of 0.1 % upwards; fewer where the engine stops closing
     */
    static Walk of(Concept concept, int steps) {
        List<double[]> rows = new ArrayList<>();
        List<String> machines = new ArrayList<>();
        List<Double> pressures = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double pressure = concept.chamberPressure() * Math.pow(1 + STEP, i);
            try {
                EngineBalance balance = Concepts.STUDY.balance(concept.withChamberPressure(pressure));
                rows.add(FIGURES.values().stream()
                        .mapToDouble(f -> f.applyAsDouble(balance))
                        .toArray());
                machines.add(stages(balance));
                pressures.add(pressure);
            } catch (PenstockException e) {
                break;
            }
        }
        List<Jump> worst = new ArrayList<>();
        int figure = 0;
        for (String name : FIGURES.keySet()) {
            if (rows.size() > 2) {
                worst.add(largest(name, figure, rows, machines, pressures));
            }
            figure++;
        }
        worst.sort((a, b) -> Double.compare(b.overMedian(), a.overMedian()));
        int switches = 0;
        for (int i = 1; i < machines.size(); i++) {
            switches += machines.get(i).equals(machines.get(i - 1)) ? 0 : 1;
        }
        return new Walk(worst, Math.max(0, rows.size() - 1), switches);
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

    private static Jump largest(
            String name, int figure, List<double[]> rows, List<String> machines, List<Double> pressures) {
        double[] sizes = new double[rows.size() - 1];
        int at = 0;
        for (int i = 0; i < sizes.length; i++) {
            boolean same = machines.get(i + 1).equals(machines.get(i));
            sizes[i] = same ? Math.abs(rows.get(i + 1)[figure] - rows.get(i)[figure]) : 0;
            at = sizes[i] > sizes[at] ? i : at;
        }
        double largest = sizes[at];
        Arrays.sort(sizes);
        double median = Math.max(
                sizes[sizes.length / 2], Math.max(Double.MIN_NORMAL, ROUND_OFF * Math.abs(rows.get(0)[figure])));
        return new Jump(name, pressures.get(at), rows.get(at)[figure], rows.get(at + 1)[figure], largest / median);
    }
}
