package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ParallelTest {

    @Test
    void resultsKeepTheOrderAndEachIsTold() {
        List<Integer> inputs = IntStream.range(0, 50).boxed().toList();
        List<Integer> told = new ArrayList<>();
        List<Integer> squares = Parallel.map(inputs, i -> "n", i -> i * i, (done, of, what) -> told.add(done));
        assertThat(squares).isEqualTo(inputs.stream().map(i -> i * i).toList());
        assertThat(told).isEqualTo(IntStream.rangeClosed(1, 50).boxed().toList());
    }

    @Test
    void theFirstFailureIsThrownAsItIs() {
        assertThatThrownBy(() -> Parallel.map(
                        List.of(1, 2, 3),
                        i -> "n",
                        i -> {
                            throw new IllegalArgumentException("at " + i);
                        },
                        Progress.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("at 1");
    }
}
