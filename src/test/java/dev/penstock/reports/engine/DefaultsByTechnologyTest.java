package dev.penstock.reports.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.input.InputValue;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the text of a balance says of defaults that follow from the technology. Identity: one line for each, with its source. */
class DefaultsByTechnologyTest {

    @Test
    void eachHasALineThatNamesTheTechnology() {
        Concept concept = Concepts.READER.read(Path.of("cycles/heron.toml"), Map.of("technology", "brazed-tubes"));
        List<InputValue> named = concept.document().inputs().stream()
                .filter(input -> input.source().contains("technology brazed-tubes"))
                .toList();
        assertThat(named).hasSizeGreaterThan(8);
        assertThat(BalanceText.defaults(concept.document().byTechnology()).lines())
                .hasSize(named.size())
                .allMatch(line -> line.contains(", default: technology brazed-tubes: "))
                .anyMatch(line -> line.startsWith("cooling.channels = \"tube\", "));
    }

    @Test
    void withoutTheWordThereIsNone() {
        assertThat(Concepts.read("heron.toml").document().byTechnology()).isEmpty();
    }
}
