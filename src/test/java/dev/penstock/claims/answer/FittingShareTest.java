package dev.penstock.claims.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FittingShareTest {

    private static final FittingShare.Step CLOSING = new FittingShare.Step(0.5, 0.9, "close");
    private static final FittingShare.Step LIMITS = new FittingShare.Step(0.1, 0.6, "keep their limits");
    private static final FittingShare.Step EQUAL = new FittingShare.Step(0.4, 0.5, "fit the claim on engine.mass");

    @Test
    void theStepAtWhichMostIsLostIsTold() {
        assertThat(FittingShare.worst(List.of(CLOSING, LIMITS, EQUAL))).contains(LIMITS);
        assertThat(LIMITS).hasToString("10.0 % keep their limits, 60.0 % of the most probable kind");
    }

    @Test
    void whatBothKindsLoseAlikeIsNot() {
        assertThat(FittingShare.worst(List.of(EQUAL))).isEmpty();
    }
}
