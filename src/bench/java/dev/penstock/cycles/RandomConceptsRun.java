package dev.penstock.cycles;

import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * Balances many random concepts and says how many close, why the others do not, and how much processor time they took.
 * One engine is balanced before, so that none is charged with the start of the process. Each concept is written down as it
 * ends, so that a run that was stopped is not lost.
 */
public final class RandomConceptsRun {

    private static final double SLOW = 2;

    private final Map<Verdict.Kind, Integer> kinds = new EnumMap<>(Verdict.Kind.class);
    private final Map<String, Integer> closed = new TreeMap<>();
    private final Map<String, Integer> reasons = new TreeMap<>();
    private double[] seconds = new double[0];

    private RandomConceptsRun() {}

    /**
     * @param arguments "usual" or "wide"; number of concepts; seed; file for one line per concept; longest wall-clock time
     *     (minutes)
     * @throws IOException if the file cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 5) {
            System.err.println("arguments: usual|wide COUNT SEED FILE MINUTES");
            return;
        }
        long seed = Long.parseLong(arguments[2]);
        Supplier<RandomConcepts.Draw> draws =
                arguments[0].equals("wide") ? new WideConcepts(seed)::next : new RandomConcepts(seed)::next;
        Instant end = Instant.now().plus(Duration.ofMinutes(Long.parseLong(arguments[4])));
        try (PrintWriter lines = new PrintWriter(Files.newBufferedWriter(Path.of(arguments[3])))) {
            RandomConceptsRun run = new RandomConceptsRun();
            run.all(draws, Integer.parseInt(arguments[1]), end, lines);
            run.tell();
        }
    }

    private void all(Supplier<RandomConcepts.Draw> draws, int count, Instant end, PrintWriter lines) {
        Concepts.balance("heron.toml");
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double[] times = new double[count];
        int i = 0;
        for (; i < count && Instant.now().isBefore(end); i++) {
            RandomConcepts.Draw draw = draws.get();
            long start = clock.getCurrentThreadCpuTime();
            Verdict verdict = Verdict.on(draw);
            times[i] = (clock.getCurrentThreadCpuTime() - start) * 1e-9;
            kinds.merge(verdict.kind(), 1, Integer::sum);
            if (verdict.kind() == Verdict.Kind.CLOSED) {
                closed.merge(draw.cycle().id(), 1, Integer::sum);
            } else {
                reasons.merge(verdict.reason(), 1, Integer::sum);
            }
            lines.printf(
                    Locale.ROOT,
                    "%d\t%s\t%.3f\t%s\t%s\t%s%n",
                    i,
                    verdict.kind(),
                    times[i],
                    draw.cycle().id(),
                    draw.values(),
                    verdict.reason());
            lines.flush();
        }
        seconds = Arrays.copyOf(times, i);
    }

    private void tell() {
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        int count = sorted.length;
        if (count == 0) {
            System.out.println("no concept was tried");
            return;
        }
        System.out.printf(
                Locale.ROOT,
                "%d concepts: %s%nprocessor time: mean %.3f s, p99 %.2f s, worst %.2f s, %d over %.0f s%n",
                count,
                kinds,
                Arrays.stream(sorted).sum() / count,
                sorted[(int) Math.ceil(0.99 * count) - 1],
                sorted[count - 1],
                Arrays.stream(sorted).filter(s -> s > SLOW).count(),
                SLOW);
        System.out.println("closed " + closed);
        reasons.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder()))
                .forEach(e -> System.out.printf(
                        Locale.ROOT, "%6.2f %%  %d  %s%n", 100.0 * e.getValue() / count, e.getValue(), e.getKey()));
    }
}
