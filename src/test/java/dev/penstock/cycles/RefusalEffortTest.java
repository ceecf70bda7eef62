package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.errors.LimitReached;
import dev.penstock.numerics.Cancellation;
import org.junit.jupiter.api.Test;

/** How far a refusal looks: in pressures and in questions whether to go on, not in seconds. */
class RefusalEffortTest {

    /** An expander bleed engine whose jacket overheats its methane at every pressure below; lower down no pump is needed either. */
    private static final Concept HOPELESS = WideConcepts.draw(2, 1754).concept();

    private static final long MOST_ASKED = 2000;

    @Test
    void theLadderEndsAtTheFirstLimitBelow() {
        refuse();
        long[] asked = {0};
        Cancellation.during(
                () -> {
                    asked[0]++;
                    return false;
                },
                () -> {
                    refuse();
                    return "";
                });
        assertThat(asked[0]).isBetween(100L, MOST_ASKED);
    }

    private static void refuse() {
        assertThatThrownBy(() -> Concepts.STUDY.balance(HOPELESS))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining("tried from 2.25 to 5.06");
    }
}
