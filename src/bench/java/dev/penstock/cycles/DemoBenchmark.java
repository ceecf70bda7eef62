package dev.penstock.cycles;

import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.sheet.Models;
import dev.penstock.cycles.solving.BalanceReport;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.fluids.coolprop.CoolPropLibrary;
import dev.penstock.input.HomeFolder;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Processor time of warm balances, of the same 1 % away from a solved one, and of limits, in batches by turns, so that a machine that
 * is busier at one moment is so for all of them; with the goal of each, and what each balance does, counted.
 */
public final class DemoBenchmark {

    private static final int WARMING = 30;
    private static final int BATCHES = 5;
    private static final int EACH = 6;
    private static final double AWAY = 1.01;

    /** What is timed: its name, its goal (ms), how many times less often than a balance it is done. */
    private record Row(String name, double goal, int rarer, Runnable work) {}

    private final EngineStudy study = EngineStudy.open();
    private final Balancer balancer = new Balancer(new Models(
            SpeciesLibrary.open(HomeFolder.find()),
            new JacketSolver(WallLibrary.open(HomeFolder.find()))));

    private DemoBenchmark() {}

    /** @param arguments "balances" for the balances alone */
    public static void main(String[] arguments) {
        new DemoBenchmark().run(arguments.length == 0);
    }

    private void run(boolean limits) {
        Map<String, double[]> goals =
                Map.of("heron", new double[] {3, 1}, "razorbill", new double[] {4, 1.5}, "gannet", new double[] {5, 2});
        List<Row> rows = new ArrayList<>();
        List<String> demos = List.of("heron", "razorbill", "gannet");
        for (String demo : demos) {
            Concept concept = Concepts.READER.read(Path.of("cycles", demo + ".toml"));
            rows.add(new Row("balance " + demo, goals.get(demo)[0], 1, () -> study.balance(concept)));
        }
        for (String demo : demos) {
            Concept concept = Concepts.READER.read(Path.of("cycles", demo + ".toml"));
            Concept beside = concept.withChamberPressure(AWAY * concept.chamberPressure());
            Balancer.Solved solved = balancer.solve(beside, Optional.empty());
            rows.add(new Row("the same 1 % away, " + demo, goals.get(demo)[1], 1, () -> BalanceReport.of(
                    balancer.solve(concept, Optional.of(solved)))));
        }
        if (limits) {
            rows.add(limit("gas-generator", 25));
            rows.add(limit("full-flow", 40));
            rows.add(limit("expander", 40));
        }
        time(rows);
        count(demos);
    }

    private Row limit(String cycle, double goal) {
        Cycle kind = Cycle.all().stream()
                .filter(c -> c.id().equals(cycle))
                .findFirst()
                .orElseThrow();
        Concept concept = Concepts.READER.parse(cycle, kind.example().shortest(cycle, "Benchmark"), Map.of());
        return new Row("limit " + cycle, goal, EACH, () -> study.limit(concept));
    }

    private static void time(List<Row> rows) {
        rows.forEach(row -> repeat(row, WARMING / row.rarer));
        double[][] times = new double[rows.size()][BATCHES];
        for (int batch = 0; batch < BATCHES; batch++) {
            for (int i = 0; i < rows.size(); i++) {
                times[i][batch] = repeat(rows.get(i), EACH / rows.get(i).rarer);
            }
        }
        System.out.printf("milliseconds of processor time, of %d batches by turns %16s %8s %8s%n", BATCHES, "median", "best", "goal");
        for (int i = 0; i < rows.size(); i++) {
            Arrays.sort(times[i]);
            System.out.printf(
                    Locale.ROOT,
                    "%-56s %8.1f %8.1f %8.1f%n",
                    rows.get(i).name,
                    times[i][BATCHES / 2],
                    times[i][0],
                    rows.get(i).goal);
        }
    }

    private void count(List<String> demos) {
        for (String demo : demos) {
            Concept concept = Concepts.READER.read(Path.of("cycles", demo + ".toml"));
            long before = CoolPropLibrary.nativeCalls();
            var effort = study.balance(concept).effort();
            System.out.println(demo + ": " + effort + ", " + (CoolPropLibrary.nativeCalls() - before) + " calls of CoolProp");
        }
    }

    private static double repeat(Row row, int times) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        for (int i = 0; i < times; i++) {
            row.work.run();
        }
        return (clock.getCurrentThreadCpuTime() - start) / 1e6 / times;
    }
}
