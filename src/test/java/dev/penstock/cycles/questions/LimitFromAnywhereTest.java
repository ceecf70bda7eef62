package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Identity: the pressure that a file states is only where somebody began. A search asks for nothing but the concept at the pressures of
 * its own ladder, so that it is enough that those are the same from every file; the long part searches in full
 * ({@code -Dpenstock.reach.long=true}, half an hour).
 */
class LimitFromAnywhereTest {

    private static final String PRESSURE = "engine.chamber_pressure";

    /** Largest pressure that a file may state (Pa). */
    private static final double LARGEST = 1e8;

    static Stream<Concept> concepts() {
        return Stream.concat(
                Concepts.demos().stream().map(Concepts::read),
                Cycle.all().stream().map(cycle -> Concepts.example(cycle)));
    }

    private static Concept stated(Concept concept, double factor) {
        return Concepts.READER.reread(concept, Map.of(PRESSURE, factor * concept.chamberPressure() + " Pa"));
    }

    @ParameterizedTest
    @MethodSource("concepts")
    void aConceptAtAPressureIsTheSameFromEveryStatedPressure(Concept concept) {
        double asked = 1.21 * concept.chamberPressure();
        Concept expected = concept.withChamberPressure(asked);
        for (double factor : new double[] {1 / 3.0, 0.8, 3}) {
            Concept there = stated(concept, factor).withChamberPressure(asked);
            assertThat(values(there)).as(concept.name() + " from " + factor).isEqualTo(values(expected));
            assertThat(there.chamber()).isEqualTo(expected.chamber());
            assertThat(there.cooling()).isEqualTo(expected.cooling());
            assertThat(there.burners()).isEqualTo(expected.burners());
            assertThat(there.turbines()).isEqualTo(expected.turbines());
            assertThat(there.limits()).isEqualTo(expected.limits());
        }
    }

    private static List<String> values(Concept concept) {
        return concept.document().inputs().stream()
                .map(v -> v.key() + " = " + v.value() + ", " + v.source() + ", " + v.spread())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("concepts")
    @EnabledIfSystemProperty(named = "penstock.reach.long", matches = "true")
    void theAnswerIsTheSameFromAThirdToThreeTimesIt(Concept concept) {
        LimitResult result = Concepts.STUDY.reach(concept);
        double answer = result.chamberPressure();
        for (double factor : new double[] {1 / 3.0, Math.min(3, LARGEST / answer)}) {
            double other = Concepts.STUDY
                    .reach(stated(concept, factor * answer / concept.chamberPressure()))
                    .chamberPressure();
            assertThat(other).as(concept.name() + " from " + factor).isCloseTo(answer, within(5e-3 * answer));
        }
    }
}
