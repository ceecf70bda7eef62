package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Delivered specific impulse against published engines, and the page that reports it. */
class PerformanceValidationTest {

    private static final Path PAGE = Path.of("docs/validation/performance.md");

    private static PerformanceValidation.Outcome outcome;
    private static String page;

    @BeforeAll
    static void compute() {
        PerformanceValidation validation = new PerformanceValidation();
        outcome = validation.compute();
        page = PerformanceValidation.page(outcome, validation.computeNominal());
    }

    /** The stated target: mean at most 1.5 %, against the figures in engines.csv with their sources. */
    @Test
    void meanVacuumImpulseIsWithinTheTarget() {
        assertThat(outcome.meanVacuumError()).isLessThanOrEqualTo(0.015);
    }

    /** The mean misses its target of 1.5 % by the one engine whose computed flow separates; regression. */
    @Test
    void meanSeaLevelImpulseIsNoWorseThanThePageSays() {
        assertThat(outcome.meanSeaLevelError()).isLessThanOrEqualTo(0.016);
    }

    /** No engine is beyond the target of 3 % but those that the page names with a cause, and each of those still is. */
    @Test
    void enginesBeyondTheTargetAreNamedWithTheirCause() {
        assertThat(outcome.missed()).containsExactlyElementsOf(PerformanceValidation.CAUSES.keySet());
    }

    @Test
    void thePageShowsWhatTheProgramComputes() throws IOException {
        PageNumbers.holdAgainst(PAGE, page);
    }
}
