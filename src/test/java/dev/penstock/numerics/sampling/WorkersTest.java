package dev.penstock.numerics.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class WorkersTest {

    @Test
    void aPieceThatIsStoppedIsLeftOut() {
        int[] done = new int[4];
        assertThat(Workers.HERE.untilStopped(4, i -> {
                    if (i == 1) {
                        throw new CancellationException();
                    }
                    done[i]++;
                }))
                .isFalse();
        assertThat(done).containsExactly(1, 0, 1, 1);
        assertThat(Workers.HERE.untilStopped(4, i -> done[i]++)).isTrue();
    }

    @Test
    void anyOtherFailureIsNotKept() {
        assertThatThrownBy(() -> Workers.HERE.untilStopped(2, i -> {
                    throw new IllegalStateException("broken");
                }))
                .hasMessage("broken");
    }
}
