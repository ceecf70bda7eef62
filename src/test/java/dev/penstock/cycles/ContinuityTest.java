package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Identity: an engine that differs a little differs little. {@code ContinuityRun} does the same for many random engines. */
class ContinuityTest {

    private static final double LARGEST_OVER_MEDIAN = 20;

    @ParameterizedTest
    @ValueSource(strings = {"guillemot.toml", "avocet.toml", "heron.toml"})
    void noSmallStepOfPressureIsALeapOfTheEngine(String demo) {
        assertThat(Continuity.of(Concepts.read(demo), 16)).isNotEmpty().allSatisfy(jump -> assertThat(jump.overMedian())
                .as(jump.toString())
                .isLessThan(LARGEST_OVER_MEDIAN));
    }
}
