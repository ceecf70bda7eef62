package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Delivered specific impulse against published engines, and the page that reports it. */
class PerformanceValidationTest {

    private static final String REWRITE = "docs/validation/performance.md is out of date; run this test with "
            + "-Dpenstock.docs.write=true to write it anew";

    private static PerformanceValidation.Outcome outcome;
    private static String page;

    @BeforeAll
    static void compute() {
        PerformanceValidation validation = new PerformanceValidation();
        outcome = validation.compute();
        page = PerformanceValidation.page(outcome, validation.computeNominal());
        if (Boolean.getBoolean("penstock.docs.write")) {
            PerformanceValidation.write(page);
        }
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

    /** Words must be the same; numbers may drift by less than anyone would act on before the page has to be written anew. */
    @Test
    void pageOnDiskSaysWhatIsComputed() {
        String[] expected = page.split("\\s+");
        String[] found = PerformanceValidation.onDisk().orElse("").split("\\s+");
        assertThat(found).as(REWRITE).hasSameSizeAs(expected);
        for (int i = 0; i < expected.length; i++) {
            if (expected[i].matches("\\(?[+-]?\\d+(\\.\\d+)?\\)?\\.?,?")) {
                assertThat(number(found[i])).as(REWRITE).isCloseTo(number(expected[i]), within(0.35));
            } else {
                assertThat(found[i]).as(REWRITE).isEqualTo(expected[i]);
            }
        }
    }

    private static double number(String token) {
        return Double.parseDouble(token.replaceAll("[(),]", "").replaceAll("\\.$", ""));
    }
}
