package dev.penstock.cycles;

import dev.penstock.errors.PenstockException;
import java.util.Map;
import java.util.TreeMap;

/** Balances many random concepts and says how many close, why the others do not, and how long the slowest took. */
public final class RandomConceptsRun {

    private RandomConceptsRun() {}

    /** @param arguments number of concepts, first number of the sequence */
    public static void main(String[] arguments) {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        RandomConcepts draws = new RandomConcepts(arguments.length > 1 ? Long.parseLong(arguments[1]) : 1);
        Map<String, Integer> done = new TreeMap<>();
        Map<String, Integer> failed = new TreeMap<>();
        double slowest = 0;
        for (int i = 0; i < count; i++) {
            RandomConcepts.Draw draw = draws.next();
            long start = System.nanoTime();
            String id = draw.cycle().id();
            try {
                Concepts.STUDY.balance(draw.concept());
                done.merge(id, 1, Integer::sum);
            } catch (PenstockException e) {
                failed.merge(id + ", " + e.getClass().getSimpleName(), 1, Integer::sum);
                System.out.println(i + " " + draw.values() + "\n    " + e.getMessage());
            }
            slowest = Math.max(slowest, (System.nanoTime() - start) * 1e-9);
        }
        int closed = done.values().stream().mapToInt(Integer::intValue).sum();
        System.out.printf("%d of %d close (%.2f %%); slowest %.2f s%n", closed, count, 100.0 * closed / count, slowest);
        System.out.println("closed " + done + "\nfailed " + failed);
    }
}
