package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SearchCommandsTest {

    private static final String PRESSURE = "engine.chamber_pressure=0.8..1.5MPa";
    private static final String RATIO = "propellants.mixture_ratio=1.4..2.0";

    @TempDir
    Path folder;

    @Test
    void optimiseTellsTheBestAndWhatItGains() {
        Run run = Run.of(
                "optimise",
                "dunlin",
                "--vary",
                PRESSURE,
                "--vary",
                RATIO,
                "--maximise",
                "isp_vacuum_s",
                "--subject-to",
                "engine.exit_diameter<=1.2 m",
                "--starts",
                "1",
                "--evaluations",
                "40",
                "--json",
                "--report",
                folder.toString());
        assertThat(run.code()).isZero();
        JsonNode document = run.json();
        JsonNode best = document.path("best");
        assertThat(best.path("inputs").path("engine.chamber_pressure").asDouble())
                .isBetween(0.8e6, 1.5e6);
        assertThat(best.path("figures").path("engine.isp_vacuum_s").asDouble())
                .isGreaterThanOrEqualTo(
                        document.at("/file/figures").path("engine.isp_vacuum_s").asDouble());
        assertThat(best.path("feasible").asBoolean()).isTrue();
        assertThat(document.path("evaluations").asInt()).isGreaterThan(40);
        assertThat(document.path("starts")).hasSize(1);
        assertThat(document.at("/constraints/0/bound").asDouble()).isEqualTo(1.2);
        assertThat(document.at("/constraints/0/kept").asBoolean()).isTrue();
        assertThat(folder.resolve("dunlin-optimum.html")).content().contains("Where is it best");
    }

    @Test
    void sensitivityAndFrontierHaveTheirKeys() throws IOException {
        Run indices = Run.of(
                "sensitivity",
                "dunlin",
                "--vary",
                PRESSURE,
                "--vary",
                RATIO,
                "--figures",
                "isp_vacuum_s",
                "--samples",
                "16",
                "--json");
        assertThat(indices.code()).isZero();
        JsonNode figure = indices.json().at("/figures/0");
        assertThat(figure.path("path").asText()).isEqualTo("engine.isp_vacuum_s");
        for (String key : new String[] {"first", "first_error", "total", "total_error"}) {
            assertThat(figure.at("/inputs/1").path(key).isNumber()).as(key).isTrue();
        }
        Path study = folder.resolve("trade.toml");
        Files.writeString(
                study,
                "name = \"t\"\nstudy = \"frontier\"\ncases = [\""
                        + Path.of("cycles/dunlin.toml").toAbsolutePath()
                        + "\"]\nvary = [\"" + PRESSURE + "\", \"" + RATIO + "\"]\nminimise = [\"engine.mass_kg\"]\n"
                        + "maximise = [\"isp_vacuum_s\"]\npopulation = 8\ngenerations = 1\n");
        Path points = folder.resolve("points");
        Run frontier = Run.of(
                "study", study.toString(), "--json", "--report", folder.toString(), "--journal", points.toString());
        assertThat(frontier.code()).isZero();
        assertThat(frontier.json().path("points").size()).isPositive();
        assertThat(frontier.json().path("hypervolume").isNumber()).isTrue();
        assertThat(frontier.json().at("/points/0/inputs").size()).isEqualTo(2);
        assertThat(folder.resolve("dunlin-frontier.html")).content().contains("<svg");
        assertThat(Files.readAllLines(points)).hasSizeGreaterThan(10);
        Run again = Run.of("study", study.toString(), "--json", "--journal", points.toString());
        assertThat(again.json().path("points")).isEqualTo(frontier.json().path("points"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--maximise isp_vacuum_s; --vary",
                "--vary engine.chamber_presure=1..2MPa --maximise isp_vacuum_s; did you mean engine.chamber_pressure",
                "--vary engine.chamber_pressure=2..1MPa --maximise isp_vacuum_s; upside down",
                "--vary engine.chamber_pressure=1..2MPa --maximise engine.cycle; it is a text or a list",
                "--vary engine.chamber_pressure=1..2MPa; --minimise",
                "--vary engine.chamber_pressure=1..2MPa --maximise isp_vacuum_s --subject-to mass_kg<=1 --subject-to mass_kg>=2;"
                        + " no value keeps both",
                "--vary engine.chamber_pressure=1..2MPa --maximise isp_vacuum_s --subject-to within_limits>=1;"
                        + " write within_limits alone",
                "--vary engine.chamber_pressure=1..2MPa --maximise isp_vacuum_s --starts 0; --starts"
            })
    void aQuestionThatCannotBeIsRefusedInOneSentence(String options, String told) {
        Run run = Run.of(("optimise dunlin " + options).split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().strip()).contains(told).hasLineCount(1);
        assertThat(run.out()).isEmpty();
    }
}
