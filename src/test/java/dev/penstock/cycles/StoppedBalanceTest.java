package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.fluids.coolprop.CoolPropLibrary;
import dev.penstock.numerics.Cancellation;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Work that nobody waits for any more ends: counted in questions whether to go on, not timed. */
class StoppedBalanceTest {

    /** Calls of CoolProp between two questions; a tenth of a second at the slowest kind of call. */
    private static final long MOST_CALLS_UNASKED = 5_000;

    /** Counts the questions, and answers yes from one of them on. */
    private static final class Watch implements BooleanSupplier {

        private final long end;
        private long asked;
        private long mostCalls;
        private long calls = CoolPropLibrary.nativeCalls();

        Watch(long end) {
            this.end = end;
        }

        @Override
        public boolean getAsBoolean() {
            long now = CoolPropLibrary.nativeCalls();
            mostCalls = Math.max(mostCalls, now - calls);
            calls = now;
            return ++asked >= end;
        }
    }

    @Test
    void aLongBalanceAsksOftenWhetherToGoOn() {
        Verdict.on(WideConcepts.boiling()); // what is made once is made
        Watch watch = new Watch(Long.MAX_VALUE);
        Cancellation.during(watch, () -> Verdict.on(WideConcepts.boiling()));
        assertThat(watch.asked).isGreaterThan(500);
        assertThat(watch.mostCalls).isLessThan(MOST_CALLS_UNASKED);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 100, 500})
    void aStoppedBalanceAsksNoMore(long end) {
        Watch watch = new Watch(end);
        assertThatThrownBy(() ->
                        Cancellation.during(watch, () -> Concepts.STUDY.balance(WideConcepts.boiling().concept())))
                .isInstanceOf(CancellationException.class);
        assertThat(watch.asked).isEqualTo(end);
    }
}
