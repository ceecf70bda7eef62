package dev.penstock.errors;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FailureTallyTest {

    @Test
    void sentencesThatDifferInNumbersAloneAreOneReason() {
        FailureTally tally = new FailureTally();
        tally.count("the pump needs 3.2 MPa");
        tally.count("the wall melts at -1.5e3 K");
        tally.count("the pump needs 12 MPa");
        assertThat(tally.all()).isEqualTo(3);
        assertThat(tally.reasons())
                .containsExactly(
                        new FailureTally.Reason(2, "the pump needs 12 MPa"),
                        new FailureTally.Reason(1, "the wall melts at -1.5e3 K"));
        assertThat(tally.foremost()).hasValue("the pump needs 12 MPa");
        assertThat(new FailureTally().foremost()).isEmpty();
    }
}
