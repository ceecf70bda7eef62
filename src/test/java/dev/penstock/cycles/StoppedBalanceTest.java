package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.Merit;
import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.coolprop.CoolPropLibrary;
import dev.penstock.numerics.Cancellation;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Work that nobody waits for any more ends: counted in questions whether to go on, not timed. */
class StoppedBalanceTest {

    /** Calls of CoolProp between two questions; a tenth of a second at the slowest kind of call. */
    private static final long MOST_CALLS_UNASKED = 5_000;

    private static final long SOON = 300;

    private static final List<OperatingCommand> LESS_THRUST = IntStream.range(1, 20)
            .mapToObj(i -> OperatingCommand.throttle(1 - 0.02 * i))
            .toList();

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
        stopped(end, () -> Concepts.STUDY.balance(WideConcepts.boiling().concept()));
    }

    static Stream<Arguments> longQuestions() {
        EngineBalance heron = Concepts.balance("heron.toml");
        Concept gannet = Concepts.read("gannet.toml");
        Concept refused = WideConcepts.draw(11, 7).concept();
        Verdict.on(WideConcepts.draw(11, 7)); // what is made once is made
        return Stream.of(
                Arguments.of("a balance that is refused", question(s -> s.balance(refused))),
                Arguments.of("limit", question(s -> s.limit(gannet))),
                Arguments.of("limit by merit", question(s -> s.limit(gannet, Merit.impulse(gannet)))),
                Arguments.of("reach", question(s -> s.reach(gannet))),
                Arguments.of("limit at another temperature", question(s -> s.limit(gannet, 700))),
                Arguments.of("off design", question(s -> s.offDesign(heron, LESS_THRUST))));
    }

    private static Consumer<EngineStudy> question(Consumer<EngineStudy> question) {
        return question;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("longQuestions")
    void everyLongQuestionAsksOftenAndStops(String name, Consumer<EngineStudy> question) {
        Watch watch = stopped(SOON, () -> question.accept(Concepts.STUDY));
        assertThat(watch.mostCalls).isLessThan(MOST_CALLS_UNASKED);
    }

    private static Watch stopped(long end, Runnable work) {
        Watch watch = new Watch(end);
        assertThatThrownBy(() -> Cancellation.during(watch, () -> {
                    work.run();
                    return "";
                }))
                .isInstanceOf(CancellationException.class);
        assertThat(watch.asked).isEqualTo(end);
        return watch;
    }
}
