package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.errors.LimitReached;
import dev.penstock.numerics.Cancellation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a refusal looks: in pressures and in questions whether to go on, not in seconds. */
class RefusalEffortTest {

    /**
     * The first is an expander bleed engine whose jacket overheats its methane at every pressure below, and lower down no pump is needed
     * either. The second closes at a lower pressure and is followed until the work of a search is spent; without that bound it took 24,000
     * questions.
     */
    @ParameterizedTest
    @CsvSource({"2, 1754, nor at 2.25 MPa, 2000", "1, 469, the search ended at its bound, 20000"})
    void aRefusalLooksNoFurtherThanItHasReasonTo(long seed, int number, String said, long most) {
        Concept concept = WideConcepts.draw(seed, number).concept();
        refuse(concept, said); // what is made once is made
        long[] asked = {0};
        Cancellation.during(
                () -> {
                    asked[0]++;
                    return false;
                },
                () -> {
                    refuse(concept, said);
                    return "";
                });
        assertThat(asked[0]).isBetween(100L, most);
    }

    private static void refuse(Concept concept, String said) {
        assertThatThrownBy(() -> Concepts.STUDY.balance(concept))
                .isInstanceOf(LimitReached.class)
                .hasMessageContaining(said);
    }
}
