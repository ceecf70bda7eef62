package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sample of what {@code RefusalsRun} does at length. */
class RefusalsTest {

    private static final int COUNT = 4;
    private static final Duration LONGEST = Duration.ofSeconds(150);

    @Test
    void noPressureThatASentenceExcludesClosesAfterAll() {
        Instant end = Instant.now().plus(LONGEST);
        Refusals refusals = new Refusals(11);
        int done = 0;
        for (; done < COUNT; done++) {
            Optional<Refusals.Case> found = refusals.next(1, () -> Instant.now().isAfter(end));
            if (found.isEmpty()) {
                break;
            }
            assertThat(found.get().closed()).as(found.get().sentence()).isEmpty();
        }
        assertThat(done).as("refusals in time").isPositive();
    }
}
