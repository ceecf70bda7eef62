package dev.penstock.cycles.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Identity: a concept at a pressure is the same whatever pressure its file states, and whatever way led there. */
class AnotherPressureTest {

    private static final String KEY = "engine.chamber_pressure";

    static Stream<Concept> concepts() {
        return Stream.concat(
                Concepts.demos().stream().map(Concepts::read),
                Cycle.all().stream().map(Concepts::example));
    }

    @ParameterizedTest
    @MethodSource("concepts")
    void nothingRemembersThePressureOfTheFile(Concept concept) {
        double stated = concept.chamberPressure();
        double asked = 1.3 * stated;
        Concept read = Concepts.READER.reread(concept, Map.of(KEY, asked + " Pa"));
        assertThat(asked).isEqualTo(read.chamberPressure());
        for (double start : List.of(stated, stated / 3, 3 * stated)) {
            Concept from = Concepts.READER.reread(concept, Map.of(KEY, start + " Pa"));
            same(from.withChamberPressure(asked), read);
            same(from.withChamberPressure(0.7 * stated).withChamberPressure(asked), read);
        }
        if (!concept.turbines().isEmpty()) {
            same(concept.withTurbineTemperature(700).withChamberPressure(asked), read.withTurbineTemperature(700));
            same(concept.withHottestGas(0.9).withChamberPressure(asked), read.withHottestGas(0.9));
        }
    }

    private static void same(Concept one, Concept other) {
        assertThat(one.chamber()).isEqualTo(other.chamber());
        assertThat(one.cooling()).isEqualTo(other.cooling());
        assertThat(one.burners()).isEqualTo(other.burners());
        assertThat(one.turbines()).isEqualTo(other.turbines());
        assertThat(one.shafts()).isEqualTo(other.shafts());
        assertThat(one.gasPath()).isEqualTo(other.gasPath());
        assertThat(one.electric()).isEqualTo(other.electric());
        assertThat(one.limits()).isEqualTo(other.limits());
        assertThat(one.pressurization()).isEqualTo(other.pressurization());
        assertThat(one.document().inputs().stream()
                        .map(i -> i.key() + " " + i.value())
                        .toList())
                .isEqualTo(other.document().inputs().stream()
                        .map(i -> i.key() + " " + i.value())
                        .toList());
    }
}
