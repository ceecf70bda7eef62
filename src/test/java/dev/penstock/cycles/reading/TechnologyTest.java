package dev.penstock.cycles.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.errors.InvalidInput;
import dev.penstock.input.InputValue;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One word for how an engine is built. Expected values are identities: a default in use is a value like any other. */
class TechnologyTest {

    private static final Path HERON = Path.of("cycles/heron.toml");
    private static final String NAMED = "technology ";

    private static Concept heron(Technology level) {
        return Concepts.READER.read(HERON, Map.of("technology", level.word()));
    }

    private static List<InputValue> named(Concept concept) {
        return concept.document().inputs().stream()
                .filter(input -> input.source().contains(NAMED))
                .toList();
    }

    /** Every default that a level sets stands in the list of inputs with its reason; stated without the level it gives the same engine. */
    @ParameterizedTest
    @EnumSource(names = {"BRAZED_TUBES", "COPPER_AND_FILM"})
    void whatALevelSetsIsListedAndGivesTheSameEngine(Technology level) {
        Concept built = heron(level);
        List<InputValue> set = named(built);
        assertThat(set).hasSizeGreaterThan(8).allSatisfy(input -> {
            assertThat(input.source()).startsWith("default: technology " + level.word() + ": ");
            assertThat(input.follows()).contains("technology");
        });
        Map<String, String> stated = new LinkedHashMap<>();
        set.forEach(input -> stated.put(input.key(), input.toml().orElseThrow()));
        Concepts.assertSame(Concepts.STUDY.balance(Concepts.READER.read(HERON, stated)), Concepts.STUDY.balance(built));
    }

    @Test
    void aFileWithoutTheWordKeepsEveryDefault() {
        assertThat(named(Concepts.READER.read(HERON))).isEmpty();
        assertThat(named(heron(Technology.UNSTATED))).isEmpty();
    }

    @Test
    void whatTheFileStatesGoesBeforeItsTechnology() {
        Concept built = Concepts.READER.read(
                HERON,
                Map.of("technology", "brazed-tubes", "cooling.material", "inconel-718", "cooling.channels", "milled"));
        assertThat(built.cooling().get(0).jacket().wall().material()).isEqualTo("inconel-718");
        assertThat(named(built)).noneMatch(input -> input.key().equals("cooling.channels"));
    }

    /** Speeds and masses stay inside the range that their own source gives. */
    @ParameterizedTest
    @EnumSource(Technology.class)
    void noLevelLeavesAPublishedRange(Technology level) {
        assertThat(named(heron(level))).allSatisfy(input -> input.spread()
                .ifPresent(range -> assertThat(input.number().orElseThrow()).isBetween(range.low(), range.high())));
    }

    @Test
    void aFilmThatComesWithTheTechnologyCoolsAndCosts() {
        Concept concept =
                Concepts.READER.read(Path.of("cycles/guillemot.toml"), Map.of("technology", "copper-and-film"));
        assertThat(concept.chamber().combustor().filmFuelFraction()).isEqualTo(0.05);
    }

    @Test
    void aWordThatIsNoLevelIsRefusedWithThoseThereAre() {
        assertThatThrownBy(() -> Concepts.READER.read(HERON, Map.of("technology", "modern")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("technology is \"modern\"; allowed are unstated, brazed-tubes");
    }
}
