package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.errors.InvalidInput;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotEmpty;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;

class StudyFileTest {

    private static final String AXIS = "engine.chamber_pressure=5..14MPa:8";

    /** Identity: what is written reads as what it was, whatever stands in the texts. */
    @Property(tries = 200)
    void aStudyReadsAsItWasWritten(
            @ForAll @NotEmpty String name,
            @ForAll @Size(min = 1, max = 4) @UniqueElements List<@NotEmpty String> cases,
            @ForAll @NotEmpty String value,
            @ForAll @IntRange(min = 2, max = 1000) int samples) {
        net.jqwik.api.Assume.that(cases.stream().noneMatch(String::isBlank) && !value.isBlank());
        net.jqwik.api.Assume.that(java.util.stream.Stream.concat(cases.stream(), List.of(name, value).stream())
                .allMatch(StudyFileTest::writable));
        Map<String, String> changes = Map.of("engine.chamber_pressure", value);
        StudyFile compare = new StudyFile(name, StudyFile.Kind.COMPARE, cases, changes, List.of(), 0, false, Map.of());
        assertThat(StudyFile.parse("x", compare.text())).isEqualTo(compare);
        List<String> first = cases.subList(0, 1);
        StudyFile sweep =
                new StudyFile(name, StudyFile.Kind.SWEEP, first, Map.of(), List.of(AXIS), samples, false, Map.of());
        assertThat(StudyFile.parse("x", sweep.text())).isEqualTo(sweep);
        StudyFile vehicle = new StudyFile(name, StudyFile.Kind.VEHICLE, first, changes, List.of(), 0, true, Map.of());
        assertThat(StudyFile.parse("x", vehicle.text())).isEqualTo(vehicle);
    }

    /**
     * TOML has no way to write half of a surrogate pair (TOML 1.0.0, section String), and a text that a terminal would obey
     * is refused.
     */
    private static boolean writable(String text) {
        return text.codePoints()
                .noneMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE || isRefused(c));
    }

    private static boolean isRefused(int c) {
        return Character.isISOControl(c) && c != '\n' && c != '\t' && c != '\r';
    }

    @Test
    void everyProblemIsToldAtOnce() {
        assertThatThrownBy(() -> StudyFile.parse(
                        "s.toml",
                        "name = \"a\"\nstudy = \"sweep\"\ncases = []\nvary = [\"x\"]\nfly = true\ncolour = 3\n"))
                .isInstanceOfSatisfying(InvalidInput.class, e -> assertThat(e.problems())
                        .extracting(InvalidInput.Problem::key)
                        .contains("cases", "vary", "fly", "colour"));
    }

    @Test
    void aKindThatIsNoneIsNamed() {
        assertThatThrownBy(() -> StudyFile.parse("s.toml", "name = \"a\"\nstudy = \"dream\"\ncases = [\"b\"]\n"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("dream");
    }

    @Test
    void onlyASweepVaries() {
        assertThatThrownBy(() -> StudyFile.parse(
                        "s.toml",
                        "name = \"a\"\nstudy = \"compare\"\ncases = [\"b\"]\nvary = [\"" + AXIS + "\"]\nsamples = 8\n"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("varies one input or more")
                .hasMessageContaining("samples");
    }

    @Test
    void whatAKindSaysFurtherIsKept() {
        StudyFile study = StudyFile.parse(
                "s.toml",
                "name = \"a\"\nstudy = \"optimise\"\ncases = [\"b\"]\nvary = [\"x.y=1..2 kN\"]\nmaximise = [\"f\"]\n"
                        + "subject_to = [\"g<=2\", \"within_limits\"]\nstarts = 3\nevaluations = 90\n");
        assertThat(study.further())
                .containsEntry("maximise", List.of("f"))
                .containsEntry("subject_to", List.of("g<=2", "within_limits"))
                .containsEntry("starts", List.of("3"))
                .containsEntry("evaluations", List.of("90"))
                .hasSize(4);
        assertThat(StudyFile.parse("x", study.text())).isEqualTo(study);
        assertThatThrownBy(() -> StudyFile.parse(
                        "s.toml", "name = \"a\"\nstudy = \"compare\"\ncases = [\"b\"]\nminimise = [\"f\"]\n"))
                .hasMessageContaining("minimise");
    }
}
