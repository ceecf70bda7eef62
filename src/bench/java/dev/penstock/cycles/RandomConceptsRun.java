package dev.penstock.cycles;

import dev.penstock.fluids.table.FluidTables;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Balances many random concepts and says how many close, why the others do not, and how much processor time of its thread each
 * took. Before, some engines of another seed are balanced and the table of every fluid that is drawn is made, so that no concept is
 * charged with what is done once in a process. Each concept is written down as it ends; a run over a file goes on where the last one
 * ended. Several processes share a run, each with a file of its own; over their files put together, with 0 minutes, the same command
 * tells of all.
 */
public final class RandomConceptsRun {

    private static final double SLOW = 2;
    private static final int SLOWEST = 10;
    private static final int COLUMNS = 6;

    /** Concepts balanced before the first that counts, of a seed that is not asked for. */
    private static final int BEFORE = 40;

    private static final long OTHER_SEED = -1;

    /** A line of the file: the number of the draw, how it ended, seconds of processor time, cycle, values, reason. */
    private record Line(int number, String kind, double seconds, String cycle, String values, String reason) {

        static Line of(String text) {
            String[] parts = text.split("\t", COLUMNS);
            return new Line(
                    Integer.parseInt(parts[0]), parts[1], Double.parseDouble(parts[2]), parts[3], parts[4], parts[5]);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT, "%d\t%s\t%.3f\t%s\t%s\t%s", number, kind, seconds, cycle, values, reason);
        }
    }

    private RandomConceptsRun() {}

    /**
     * @param arguments "usual" or "wide"; number of concepts; seed; file for one line per concept, kept and gone on with if it is
     *     there; longest wall-clock time (minutes); then the numbers of those draws that alone are wanted, or a share as
     *     1/3 (every third from number 1), or nothing
     * @throws IOException if the file cannot be read or written
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length < 5) {
            System.err.println("arguments: usual|wide COUNT SEED FILE MINUTES [NUMBER... | SHARE/OF]");
            return;
        }
        long seed = Long.parseLong(arguments[2]);
        Supplier<RandomConcepts.Draw> draws =
                arguments[0].equals("wide") ? new WideConcepts(seed)::next : new RandomConcepts(seed)::next;
        Path file = Path.of(arguments[3]);
        Instant end = Instant.now().plus(Duration.ofMinutes(Long.parseLong(arguments[4])));
        IntPredicate wanted = wanted(Arrays.stream(arguments).skip(5).toList());
        Map<Integer, Line> done = read(file);
        if (Instant.now().isBefore(end)) {
            prepare();
        }
        try (BufferedWriter writer =
                        Files.newBufferedWriter(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
                PrintWriter lines = new PrintWriter(writer)) {
            int count = Integer.parseInt(arguments[1]);
            for (int i = 0; i < count && Instant.now().isBefore(end); i++) {
                RandomConcepts.Draw draw = draws.get();
                if (!done.containsKey(i) && wanted.test(i)) {
                    Line line = balance(i, draw);
                    done.put(i, line);
                    lines.println(line);
                    lines.flush();
                }
            }
        }
        tell(List.copyOf(done.values()));
    }

    private static IntPredicate wanted(List<String> arguments) {
        if (arguments.size() == 1 && arguments.get(0).contains("/")) {
            String[] share = arguments.get(0).split("/");
            int of = Integer.parseInt(share[1]);
            int which = Integer.parseInt(share[0]);
            return i -> i % of == which;
        }
        Set<Integer> numbers = arguments.stream().map(Integer::valueOf).collect(Collectors.toSet());
        return i -> numbers.isEmpty() || numbers.contains(i);
    }

    /** Lines of earlier runs; the last one may have been cut, and its concept is then balanced again. */
    private static Map<Integer, Line> read(Path file) throws IOException {
        Map<Integer, Line> done = new HashMap<>();
        if (!Files.exists(file)) {
            return done;
        }
        String text = Files.readString(file);
        String whole = text.substring(0, text.lastIndexOf('\n') + 1);
        Files.writeString(file, whole);
        whole.lines().map(Line::of).forEach(line -> done.put(line.number(), line));
        return done;
    }

    private static void prepare() {
        Concepts.balance("heron.toml");
        RandomConcepts.PAIRS.stream()
                .flatMap(pair -> Stream.of(pair.oxidizer(), pair.fuel()))
                .distinct()
                .forEach(id -> FluidTables.of(Concepts.FLUIDS.propellant(id).fluid()));
        WideConcepts others = new WideConcepts(OTHER_SEED);
        Stream.generate(others::next).limit(BEFORE).forEach(Verdict::on);
    }

    private static Line balance(int number, RandomConcepts.Draw draw) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        Verdict verdict = Verdict.on(draw);
        double seconds = (clock.getCurrentThreadCpuTime() - start) * 1e-9;
        return new Line(
                number,
                verdict.kind().name(),
                seconds,
                draw.cycle().id(),
                draw.values().toString(),
                verdict.reason().replace('\t', ' ').replace('\n', ' '));
    }

    private static void tell(List<Line> lines) {
        int count = lines.size();
        if (count == 0) {
            System.out.println("no concept was tried");
            return;
        }
        double[] sorted = lines.stream().mapToDouble(Line::seconds).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%d concepts: %s%nprocessor time: mean %.3f s, median %.3f s, p99 %.2f s, worst %.2f s, %d over %.0f s%n",
                count,
                Arrays.stream(Verdict.Kind.values())
                        .map(kind -> kind + " "
                                + lines.stream()
                                        .filter(line -> line.kind().equals(kind.name()))
                                        .count())
                        .collect(Collectors.joining(", ")),
                Arrays.stream(sorted).average().orElseThrow(),
                sorted[count / 2],
                sorted[(int) Math.ceil(0.99 * count) - 1],
                sorted[count - 1],
                Arrays.stream(sorted).filter(s -> s > SLOW).count(),
                SLOW);
        lines.stream()
                .sorted(Comparator.comparingDouble(Line::seconds).reversed())
                .limit(SLOWEST)
                .forEach(line -> System.out.printf(
                        Locale.ROOT, "  number %d: %.2f s, %s, %s%n", line.number(), line.seconds(), line.kind(), line.cycle()));
        String good = Verdict.Kind.CLOSED.name();
        List<Line> closed =
                lines.stream().filter(line -> line.kind().equals(good)).toList();
        List<Line> others =
                lines.stream().filter(line -> !line.kind().equals(good)).toList();
        System.out.println("closed " + counts(closed, Line::cycle));
        counts(others, Line::reason).entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder()))
                .forEach(e -> System.out.printf(
                        Locale.ROOT, "%6.2f %%  %d  %s%n", 100.0 * e.getValue() / count, e.getValue(), e.getKey()));
    }

    private static Map<String, Long> counts(List<Line> lines, Function<Line, String> of) {
        return lines.stream().collect(Collectors.groupingBy(of, TreeMap::new, Collectors.counting()));
    }
}
