package dev.penstock.cycles;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.errors.PenstockException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/**
 * Follows many random cooled concepts over small steps of chamber pressure and says where a headline figure leaps. A line for each
 * concept as it ends.
 */
public final class ContinuityRun {

    private ContinuityRun() {}

    /**
     * @param arguments number of concepts; steps of 0.1 %; how many of them at once where nothing happens; seed; concepts to leave out;
     *     longest wall-clock time (minutes)
     */
    public static void main(String[] arguments) {
        if (arguments.length != 6) {
            System.err.println("arguments: COUNT STEPS STRIDE SEED LEFT_OUT MINUTES");
            return;
        }
        int count = Integer.parseInt(arguments[0]);
        int steps = Integer.parseInt(arguments[1]);
        int stride = Integer.parseInt(arguments[2]);
        RandomConcepts draws = new RandomConcepts(Long.parseLong(arguments[3]));
        int left = Integer.parseInt(arguments[4]);
        Instant end = Instant.now().plus(Duration.ofMinutes(Long.parseLong(arguments[5])));
        int done = 0;
        int balances = 0;
        int leaps = 0;
        int walked = 0;
        int switches = 0;
        while (done < count && Instant.now().isBefore(end)) {
            RandomConcepts.Draw draw = draws.next();
            try {
                Concept concept = draw.concept();
                if (concept.cooling().isEmpty()) {
                    continue;
                }
                if (left-- > 0) {
                    continue;
                }
                Continuity.Walk walk = Continuity.of(concept, steps, stride);
                List<Continuity.Jump> worst = walk.jumps();
                if (worst.isEmpty()) {
                    continue;
                }
                done++;
                walked += walk.steps();
                balances += walk.balances();
                switches += walk.switches();
                leaps += worst.get(0).overMedian() > 20 ? 1 : 0;
                System.out.println(String.format(
                        Locale.ROOT,
                        "%s %.1f %s %d steps in %d balances, %d switches %s",
                        draw.cycle().id(),
                        worst.get(0).overMedian(),
                        worst.get(0),
                        walk.steps(),
                        walk.balances(),
                        walk.switches(),
                        draw.values()));
            } catch (PenstockException e) {
                // a concept that cannot be read is another test's matter
            }
        }
        System.out.println(done + " concepts, " + leaps + " with a step over twenty times its median; " + walked + " steps in "
                + balances + " balances, " + switches + " of them to other stages and counted apart");
    }
}
