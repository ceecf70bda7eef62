package dev.penstock.cycles;

import dev.penstock.errors.PenstockException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Balances many random concepts and says how many close, why the others do not, and how much processor time the slowest
 * took. One engine is balanced before, so that none is charged with the start of the process.
 */
public final class RandomConceptsRun {

    private RandomConceptsRun() {}

    /** @param arguments number of concepts, first number of the sequence */
    public static void main(String[] arguments) {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        RandomConcepts draws = new RandomConcepts(arguments.length > 1 ? Long.parseLong(arguments[1]) : 1);
        Map<String, Integer> done = new TreeMap<>();
        Map<String, Integer> failed = new TreeMap<>();
        Concepts.balance("heron.toml");
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double slowest = 0;
        int slowestIndex = 0;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            RandomConcepts.Draw draw = draws.next();
            long start = clock.getCurrentThreadCpuTime();
            String id = draw.cycle().id();
            try {
                Concepts.STUDY.balance(draw.concept());
                done.merge(id, 1, Integer::sum);
            } catch (PenstockException e) {
                failed.merge(id + ", " + e.getClass().getSimpleName(), 1, Integer::sum);
                System.out.println(i + " " + draw.values() + "\n    " + e.getMessage());
            }
            double seconds = (clock.getCurrentThreadCpuTime() - start) * 1e-9;
            sum += seconds;
            if (seconds > slowest) {
                slowest = seconds;
                slowestIndex = i;
            }
        }
        int closed = done.values().stream().mapToInt(Integer::intValue).sum();
        System.out.printf(
                Locale.ROOT,
                "%d of %d close (%.2f %%); processor time %.3f s on average, %.2f s for the slowest, number %d%n",
                closed,
                count,
                100.0 * closed / count,
                sum / count,
                slowest,
                slowestIndex);
        System.out.println("closed " + done + "\nfailed " + failed);
    }
}
