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

    /** @param arguments number of concepts; steps of 0.1 %; seed; longest wall-clock time (minutes) */
    public static void main(String[] arguments) {
        if (arguments.length != 4) {
            System.err.println("arguments: COUNT STEPS SEED MINUTES");
            return;
        }
        int count = Integer.parseInt(arguments[0]);
        int steps = Integer.parseInt(arguments[1]);
        RandomConcepts draws = new RandomConcepts(Long.parseLong(arguments[2]));
        Instant end = Instant.now().plus(Duration.ofMinutes(Long.parseLong(arguments[3])));
        int done = 0;
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
                Continuity.Walk walk = Continuity.of(concept, steps);
                List<Continuity.Jump> worst = walk.jumps();
                if (worst.isEmpty()) {
                    continue;
                }
                done++;
                walked += walk.steps();
                switches += walk.switches();
                leaps += worst.get(0).overMedian() > 20 ? 1 : 0;
                System.out.println(String.format(
                        Locale.ROOT,
                        "%s %.1f %s %d steps, %d switches %s",
                        draw.cycle().id(),
                        worst.get(0).overMedian(),
                        worst.get(0),
                        walk.steps(),
                        walk.switches(),
                        draw.values()));
            } catch (PenstockException e) {
                // a concept that cannot be read is another test's matter
            }
        }
        System.out.println(done + " concepts, " + leaps + " with a step over twenty times its median; " + walked + " steps, "
                + switches + " of them to other stages and counted apart");
    }
}
