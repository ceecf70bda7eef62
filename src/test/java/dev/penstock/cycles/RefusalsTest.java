package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * A sample of what {@code RefusalsRun} does at length. It takes minutes. The seed is one with which a fuel-rich staged engine that was
 * followed up to 3.05 MPa closes at 3.126 MPa when it is asked of that pressure by itself.
 */
@EnabledIfSystemProperty(named = "penstock.refusals.long", matches = "true")
class RefusalsTest {

    private static final int COUNT = 3;
    private static final Duration LONGEST = Duration.ofSeconds(60);

    @Test
    void noPressureThatASentenceNamesClosesAfterAll() {
        Instant end = Instant.now().plus(LONGEST);
        Refusals refusals = new Refusals(11);
        int done = 0;
        for (; done < COUNT; done++) {
            Optional<Refusals.Case> found = refusals.next(() -> Instant.now().isAfter(end));
            if (found.isEmpty()) {
                break;
            }
            assertThat(found.get().closed()).as(found.get().sentence()).isEmpty();
        }
        assertThat(done).as("refusals in time").isPositive();
    }
}
