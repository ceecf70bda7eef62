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

    /** The stated target: mean at most 1.5 %, worst at most 3 %, against the figures in engines.csv with their sources. */
    @Test
    void vacuumImpulseIsWithinTheTarget() {
        assertThat(outcome.meanVacuumError()).isLessThanOrEqualTo(0.015);
        assertThat(outcome.worstVacuumError()).isLessThanOrEqualTo(0.03);
    }

    @Test
    void seaLevelImpulseIsWithinTheTarget() {
        assertThat(outcome.meanSeaLevelError()).isLessThanOrEqualTo(0.015);
        assertThat(outcome.worstSeaLevelError()).isLessThanOrEqualTo(0.03);
    }

    @Test
    void thePageShowsWhatTheProgramComputes() throws IOException {
        PageNumbers.holdAgainst(PAGE, page);
    }
}
