package dev.penstock.cycles.solving;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Identity: where balances are sought follows from the engine, not from the pressure asked for. */
class PressureLadderTest {

    @Test
    void aLowerQuestionAsksNoRungThatAHigherOneDoesNot() {
        List<Double> asked = PressureLadder.around(6.3664e6);
        for (double rung : asked) {
            if (rung < 6.3664e6) {
                assertThat(asked).containsAll(PressureLadder.around(rung));
            }
        }
        assertThat(asked.get(0)).isEqualTo(7.594e6); // 1 MPa times 1.5^5, as a sentence shows it
        assertThat(asked).contains(1e6).allMatch(p -> p >= 0.1e6 && p <= 2 * 6.3664e6);
    }

    @Test
    void pressuresBetweenDoNotFollowWhatIsAskedEither() {
        List<Double> wide = PressureLadder.between(2.3e6, 5.2e6);
        assertThat(wide).hasSize(8).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(wide).containsAll(PressureLadder.between(3.1e6, 4.9e6)); // 1.5^(k/4): 2.490, 2.756, 3.050 ... 5.063
        assertThat(wide.get(7)).isEqualTo(2.490e6);
    }
}
