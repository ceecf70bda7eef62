package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.reports.text.AnswerOrigin;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What every command does the same way: a table of its answer, and a document that says where it comes from. */
class TableOutputTest {

    static Stream<Arguments> answers() {
        return Stream.of(
                Arguments.of(List.of("balance", "dunlin"), "", "engine.thrust_vacuum_N"),
                Arguments.of(List.of("balance", "dunlin"), "stations", "pressure_Pa"),
                Arguments.of(List.of("off-design", "heron", "--throttle", "1,0.9"), "", "pumps.fuel pump.speed_rad_s"),
                Arguments.of(List.of("size", "skerry"), "", "start_mass_kg"),
                Arguments.of(List.of("limit", "dunlin"), "", "chamber_pressure_Pa"),
                Arguments.of(List.of("compare", "dunlin", "heron"), "", "engine.isp_vacuum_s"),
                Arguments.of(List.of("list", "walls"), "", "key"));
    }

    /** The document is the reference: the table says the same. */
    @ParameterizedTest
    @MethodSource("answers")
    void aTableSaysWhatTheDocumentSays(List<String> words, String rows, String column) {
        JsonNode document = Run.of(with(words, "--json")).document();
        assertThat(document.fieldNames()).toIterable().startsWith("penstock_version", "schema", AnswerOrigin.COMMAND);
        assertThat(document.get("schema").asText()).isEqualTo(AnswerOrigin.schema(words.get(0)));
        assertThat(document.get(AnswerOrigin.COMMAND).asText())
                .isEqualTo("penstock " + String.join(" ", words) + " --json");

        Run run = rows.isEmpty() ? Run.of(with(words, "--csv")) : Run.of(with(words, "--csv", "--rows", rows));
        assertThat(run.code()).as(run.err()).isZero();
        List<String> lines = run.out().lines().toList();
        int index = List.of(lines.get(0).split(",")).indexOf(column);
        assertThat(index).as(lines.get(0)).isNotNegative();
        JsonNode first = document;
        for (String part : List.of("stations", "points", "stages", "concepts", "entries")) {
            boolean wanted =
                    rows.equals(part) || rows.isEmpty() && !words.get(0).matches("balance|limit");
            if (wanted && document.has(part)) {
                first = document.get(part).get(0);
                assertThat(lines).hasSize(1 + document.get(part).size());
            }
        }
        for (String key : column.split("\\.")) {
            first = first.get(key);
        }
        assertThat(lines.get(1).split(",")[index]).isEqualTo(first.asText());
    }

    private static String[] with(List<String> words, String... more) {
        return Stream.concat(words.stream(), Arrays.stream(more)).toArray(String[]::new);
    }

    @Test
    void aPartThatIsNotThereIsNamedWithThoseThatAre() {
        Run run = Run.of("balance", "dunlin", "--csv", "--rows", "station");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems()).singleElement().asString().contains("--rows", "station", "stations", "limits");
        // refused before the case is looked for
        assertThat(Run.of("balance", "nobody", "--rows", "stations").problems())
                .singleElement()
                .asString()
                .contains("it needs --csv");
        assertThat(Run.of("balance", "nobody", "--csv", "--json").problems())
                .singleElement()
                .asString()
                .contains("--csv is given with --json");
    }

    /** Paper has no trail unless asked for; what is asked of paper without any is refused before the case is looked for. */
    @Test
    void whatGoesOnPaperNeedsPaper() {
        for (String option : List.of("--with-trail", "--paper=a4")) {
            for (String command : List.of("balance", "size")) {
                assertThat(Run.of(command, "nobody", option).problems())
                        .singleElement()
                        .asString()
                        .contains("it needs --report");
            }
        }
        assertThat(Run.of("size", "nobody", "--with-trail", "--report", "page.html")
                        .problems())
                .singleElement()
                .asString()
                .contains("--with-trail", "FILE.pdf");
    }

    /** What takes long is not begun for a part that no answer has. */
    @Test
    void aLongCommandRefusesAWrongPartBeforeItBegins() {
        for (List<String> words : List.of(
                List.of("limit", "points"),
                List.of("size", "flight"),
                List.of("trade", "pairs"),
                List.of("judge", "propellants"),
                List.of("cool", "map"),
                List.of("sweep", "points", "--vary", "engine.thrust=1,2 kN"),
                List.of("optimise", "starts", "--minimise", "mass_kg"),
                List.of("sensitivity", "screening", "--vary", "engine.thrust=1 kN..2 kN"),
                List.of("frontier", "points", "--minimise", "mass_kg", "--maximise", "isp_vacuum_s"))) {
            Stream<String> line = Stream.of(words.get(0), "nobody", "--csv", "--rows", "name");
            assertThat(Run.of(Stream.concat(line, words.stream().skip(2)).toArray(String[]::new))
                            .problems())
                    .as(words.toString())
                    .singleElement()
                    .asString()
                    .contains("--rows is name; allowed are ", words.get(1));
        }
        for (List<String> part : List.of(
                List.of("limit", "cycles"),
                List.of("limit", "points"),
                List.of("size", "flight.points"),
                List.of("size", "orbits"),
                List.of("size", "return.warnings"),
                List.of("size", "shown_stages"))) {
            assertThat(Run.of(part.get(0), "nobody", "--csv", "--rows", part.get(1))
                            .problems())
                    .singleElement()
                    .asString()
                    .contains("CASE is nobody");
        }
    }
}
