package dev.penstock.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.penstock.errors.InvalidInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class InputFileTest {

    private static final String TEXT =
            """
            name = "Test"

            [engine]
            chamber_pressure = "75 bar"
            thrust = "600 kN"   # vacuum
            stages = 2

            [[part]]
            mass = "3 kg"
            [[part]]
            mass = "-1 kg"
            """;

    private static InputFile file(Map<String, String> changes) {
        return InputFile.parse("case.toml", TEXT, changes);
    }

    private static double pressure(InputFile file) {
        return file.root().table("engine").quantity("chamber_pressure", Dimension.PRESSURE, Range.POSITIVE);
    }

    @Test
    void readsQuantitiesInSi() {
        assertThat(pressure(file(Map.of()))).isEqualTo(7.5e6);
    }

    /** By definition: any text may be typed where a text is asked for, also one that looks like something else. */
    @Test
    void aTextMayLookLikeANumberATruthOrAList() {
        for (String typed : List.of("-3", "1.50", "true", "[2]", "-3 # no remark", "a \"b\"")) {
            assertThat(file(Map.of("name", typed)).root().text("name")).isEqualTo(typed);
        }
        assertThat(file(Map.of("name", "\"-3\"")).root().text("name")).isEqualTo("-3");
    }

    @Test
    void reportsAllProblemsTogetherWithTheirLines() {
        InputFile file = file(Map.of());
        InputTable engine = file.root().table("engine");
        file.root().text("name");
        engine.quantity("chamber_pressure", Dimension.FORCE, Range.POSITIVE);
        engine.quantity("thrust", Dimension.FORCE, Range.of(1, 1000));
        engine.quantity("mixture_ratio", Dimension.RATIO, Range.POSITIVE);
        engine.integer("stages", 3, 5, 3);
        file.root().tables("part").forEach(t -> t.quantity("mass", Dimension.MASS, Range.POSITIVE));

        InvalidInput error = catchThrowableOfType(InvalidInput.class, file::finish);
        assertThat(error.problems())
                .extracting(InvalidInput.Problem::sentence)
                .containsExactly(
                        "case.toml:4: engine.chamber_pressure is \"75 bar\"; write a force such as \"600 kN\"",
                        "case.toml:5: engine.thrust is \"600 kN\"; allowed is 0.001 to 1 kN",
                        "case.toml:3: engine.mixture_ratio is missing; write a plain number",
                        "case.toml:6: engine.stages is 2; allowed is a whole number from 3 to 5",
                        "case.toml:11: part[1].mass is \"-1 kg\"; allowed is above 0 kg");
    }

    @Test
    void suggestsTheKnownKeyForAMisspeltOne() {
        InputFile file = InputFile.parse("case.toml", "[engine]\nchamber_presure = \"75 bar\"\n", Map.of());
        file.root().table("engine").optionalQuantity("chamber_pressure", Dimension.PRESSURE, Range.POSITIVE);
        assertThatThrownBy(file::finish)
                .isInstanceOf(InvalidInput.class)
                .hasMessage("case.toml:2: engine.chamber_presure is not a known key; did you mean chamber_pressure?");
    }

    @Test
    void aChangeReachesOneOfSeveralTables() {
        InputFile changed = file(Map.of("part[1].mass", "5 kg"));
        assertThat(changed.root().tables("part").get(1).quantity("mass", Dimension.MASS, Range.POSITIVE))
                .isEqualTo(5);
        assertThatThrownBy(() -> file(Map.of("part[7].mass", "5 kg")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("there is no table part[7]");
    }

    @Test
    void changesReplaceValuesBeforeReading() {
        assertThat(pressure(file(Map.of("engine.chamber_pressure", "9 MPa")))).isEqualTo(9e6);
        assertThat(file(Map.of("engine.stages", "3")).root().table("engine").integer("stages", 1, 5, 1))
                .isEqualTo(3);
        assertThat(file(Map.of("tanks.fuel.pressure", "3 bar"))
                        .root()
                        .table("tanks")
                        .table("fuel")
                        .quantity("pressure", Dimension.PRESSURE, Range.POSITIVE))
                .isEqualTo(3e5);
    }

    @Test
    void aChangeThroughAValueIsRefused() {
        assertThatThrownBy(() -> file(Map.of("name.first", "x")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("name is a value, not a table");
    }

    @Test
    void brokenTomlNamesTheLine() {
        assertThatThrownBy(() -> InputFile.parse("case.toml", "a = 1\nb = = 2\n", Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageStartingWith("case.toml:2: ");
    }

    @Test
    void aMissingFileIsBadInput() {
        assertThatThrownBy(() -> InputFile.read(Path.of("no/such/file.toml")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("no/such/file.toml");
    }

    @Test
    void aTableWrittenAsAValueIsAProblem() {
        InputFile file = InputFile.parse("case.toml", "engine = 3\n", Map.of());
        file.root().table("engine");
        assertThatThrownBy(file::finish)
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("write a table [engine]");
    }

    @Test
    void choicesListWhatIsAllowed() {
        InputFile file = InputFile.parse("case.toml", "cycle = \"steam\"\n", Map.of());
        file.root().choice("cycle", List.of("pressure-fed", "full-flow"));
        assertThatThrownBy(file::finish)
                .hasMessage("case.toml:1: cycle is \"steam\"; allowed are pressure-fed, full-flow");
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheText() {
        InputFile file = InputFile.parse("case.toml", "\uFEFF" + TEXT, Map.of());
        assertThat(file.root().text("name")).isEqualTo("Test");
        assertThat(file.text()).isEqualTo(TEXT);
    }

    @Test
    void controlCharactersAndEndlessTextsAreRefusedAndNotEchoed() {
        for (String name : List.of("\\u001b[31m", "\\u0000", "\\u009b", "x".repeat(100_000))) {
            InputFile file = InputFile.parse("case.toml", "name = \"" + name + "\"\n", Map.of());
            assertThat(file.root().text("name")).isEmpty();
            InvalidInput e = catchThrowableOfType(InvalidInput.class, file::finish);
            assertThat(e.problems()).hasSize(1);
            assertThat(e.problems().get(0).sentence())
                    .contains("at most 5000 characters")
                    .hasSizeLessThan(500);
        }
    }

    @Test
    void aTextLargerThanAnyConceptIsRefused() {
        assertThatThrownBy(() -> InputFile.parse("case.toml", "# " + "x".repeat(InputFile.LARGEST), Map.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("file is case.toml; it may hold 1024 KiB");
    }

    @Test
    void endlessKeysAndNestingAreRefusedByName() {
        InputFile dotted = InputFile.parse("case.toml", "a" + ".a".repeat(20_000) + " = 1\n", Map.of());
        assertThatThrownBy(dotted::finish).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> InputFile.parse("case.toml", "x = " + "[".repeat(20_000), Map.of()))
                .isInstanceOf(InvalidInput.class);
    }

    @Test
    void aNumberBeyondAllBoundsIsRefused() {
        for (String value : List.of("1e400", "\"1e400\"", "1e999999999", "-1e400")) {
            InputFile file = InputFile.parse("case.toml", "x = " + value + "\n", Map.of());
            file.root().quantity("x", Dimension.RATIO, Range.ANY, 1);
            assertThatThrownBy(file::finish).isInstanceOf(InvalidInput.class).hasMessageContaining("case.toml:1: x is");
        }
    }

    private static String where(String text, String key) {
        InputFile file = InputFile.parse("case.toml", text, Map.of());
        file.problem(key, "x", "y");
        return catchThrowableOfType(InvalidInput.class, file::finish)
                .problems()
                .get(0)
                .where();
    }

    @Test
    void linesOfKeysInSubtablesAreRight() {
        String text =
                """
                points = [
                  [1, 2],
                  [3, 4]
                ]
                note = \"""
                [stage]
                share = 1
                \"""
                [[stage]]
                share = 0.4
                [stage.recovery]
                mode = "lost"
                [[stage]]
                share = 0.6
                [stage.recovery]   # of the second
                mode = "lost"
                [[stage.part]]
                mass = 1
                [set]
                "engine.thrust" = 3
                """;
        assertThat(where(text, "stage[0].share")).isEqualTo("case.toml:10");
        assertThat(where(text, "stage[0].recovery.mode")).isEqualTo("case.toml:12");
        assertThat(where(text, "stage[1].recovery.mode")).isEqualTo("case.toml:16");
        assertThat(where(text, "stage[1].recovery.gone")).isEqualTo("case.toml:15");
        assertThat(where(text, "stage[1].part[0].mass")).isEqualTo("case.toml:18");
        assertThat(where(text, "set.\"engine.thrust\"")).isEqualTo("case.toml:20");
    }
}
