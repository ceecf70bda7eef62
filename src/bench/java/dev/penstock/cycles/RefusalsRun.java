package dev.penstock.cycles;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Puts many random refusals to the test and says how many of their sentences were false. */
public final class RefusalsRun {

    private RefusalsRun() {}

    /** @param arguments number of refusals; seed; longest wall-clock time (minutes) */
    public static void main(String[] arguments) {
        if (arguments.length != 3) {
            System.err.println("arguments: COUNT SEED MINUTES");
            return;
        }
        Instant end = Instant.now().plus(Duration.ofMinutes(Long.parseLong(arguments[2])));
        Refusals refusals = new Refusals(Long.parseLong(arguments[1]));
        int done = 0;
        int asked = 0;
        int wrong = 0;
        while (done < Integer.parseInt(arguments[0])) {
            Optional<Refusals.Case> found = refusals.next(() -> Instant.now().isAfter(end));
            if (found.isEmpty()) {
                break;
            }
            done++;
            asked += found.get().asked().size();
            if (!found.get().closed().isEmpty()) {
                wrong++;
                System.out.println(found.get());
            }
        }
        System.out.println(done + " refusals, " + asked + " pressures asked again, " + wrong + " sentences false");
    }
}
