package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.study.StudyFile;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Searches and samples as the page asks for them. */
class SearchRoutesTest {

    private static final String CASE =
            "\"cases\":[\"dunlin.toml\"],\"changes\":{},\"vary\":[\"engine.chamber_pressure=0.8..1.5MPa\"]";

    @TempDir
    static Path folder;

    private static Served served;

    @BeforeAll
    static void start() throws IOException {
        served = new Served(folder);
    }

    @AfterAll
    static void stop() {
        assertThat(served.defects).isEmpty();
        served.close();
    }

    private static String begun(String further) {
        JsonNode answer = served.json(served.post("/api/search", "{" + CASE + "," + further + "}"));
        assertThat(answer.path("id").asText()).as(answer.toString()).isNotEmpty();
        return "/api/search/" + answer.path("id").asText();
    }

    private static JsonNode ended(String job) throws InterruptedException {
        JsonNode state = served.json(served.get(job));
        while (state.path("running").asBoolean()) {
            Thread.sleep(50);
            state = served.json(served.get(job));
        }
        return state;
    }

    private static JsonNode section(JsonNode result, String id) {
        for (JsonNode section : result.path("sections")) {
            if (section.path("id").asText().equals(id)) {
                return section;
            }
        }
        throw new AssertionError("no section " + id);
    }

    @Test
    void theBestPointIsFoundDrawnAndOpensOnItsPage() throws InterruptedException {
        String job = begun("\"study\":\"optimise\",\"maximise\":[\"isp_vacuum_s\"],\"subject_to\":[\"within_limits\"],"
                + "\"starts\":[\"1\"],\"evaluations\":[\"20\"]");
        assertThat(ended(job).path("doing").asText()).contains("points");
        JsonNode result = served.json(served.get(job + "/result"));
        assertThat(result.path("complete").asBoolean()).isTrue();
        assertThat(section(result, "best").at("/figures/0/svg").asText()).contains("engine, chamber pressure");
        assertThat(section(result, "starts").at("/figures/0/svg").asText()).contains("points tried by the start");
        JsonNode document = served.json(served.get(job + "/answer.json"));
        double best =
                document.at("/best/inputs").path("engine.chamber_pressure").asDouble();
        assertThat(best).isBetween(0.8e6, 1.5e6);
        assertThat(result.at("/opened/0").asText())
                .startsWith("/?file=dunlin.toml&set.engine.chamber_pressure=" + best);
        String report = served.json(served.post(job + "/report", "{\"form\":\"html\"}"))
                .path("id")
                .asText();
        assertThat(served.get("/shown/" + report).body()).contains("Where is it best");
    }

    @Test
    void everyPointOfAFrontierHasAnAddress() throws InterruptedException {
        String job = begun("\"study\":\"frontier\",\"maximise\":[\"isp_vacuum_s\"],\"minimise\":[\"engine.mass_kg\"],"
                + "\"population\":[\"8\"],\"generations\":[\"1\"]");
        ended(job);
        JsonNode result = served.json(served.get(job + "/result"));
        JsonNode document = served.json(served.get(job + "/answer.json"));
        assertThat(result.path("opened").size())
                .isPositive()
                .isEqualTo(document.path("points").size());
        assertThat(section(result, "frontier").at("/tables/0/rows").size())
                .isEqualTo(result.path("opened").size());
    }

    @Test
    void whichInputsMatterIsDrawn() throws InterruptedException {
        String job = begun("\"study\":\"sensitivity\",\"figures\":[\"isp_vacuum_s\"],\"samples\":16");
        ended(job);
        JsonNode result = served.json(served.get(job + "/result"));
        assertThat(section(result, "figure-0").at("/figures/0/svg").asText())
                .contains("engine, chamber pressure: total");
        JsonNode input = served.json(served.get(job + "/answer.json")).at("/figures/0/inputs/0");
        // All of the variance is this input's; sixteen points say so roughly.
        assertThat(input.path("total").asDouble()).isBetween(0.4, 1.6);
        assertThat(input.path("total_error").isNumber()).isTrue();
    }

    @Test
    void aSampleShowsHowFiguresAreSpreadAndGivesItsRows() throws InterruptedException {
        String job = begun("\"study\":\"sample\",\"points\":[\"12\"]");
        ended(job);
        JsonNode result = served.json(served.get(job + "/result"));
        assertThat(section(result, "spread").path("figures").size()).isPositive();
        assertThat(served.get(job + "/rows.csv").body()).hasLineCount(13).startsWith("point,");
    }

    @Test
    void aStoppedSampleKeepsWhatIsDone() throws InterruptedException {
        String job = begun("\"study\":\"sample\",\"points\":[\"3000\"]");
        JsonNode state = served.json(served.get(job));
        while (state.path("done").asInt() < 3) {
            Thread.sleep(50);
            state = served.json(served.get(job));
        }
        served.post(job + "/stop", "{}");
        ended(job);
        JsonNode result = served.json(served.get(job + "/result"));
        assertThat(result.path("complete").asBoolean()).isFalse();
        assertThat(section(result, "spread").at("/text/0").asText()).contains("of 3000 points are done");
    }

    @Test
    void aStudyIsSavedAsTheCommandLineReadsIt() {
        JsonNode saved = served.json(served.post(
                "/api/study",
                "{" + CASE + ",\"study\":\"optimise\",\"minimise\":[\"engine.mass_kg\"],\"starts\":[\"2\"],"
                        + "\"name\":\"light\",\"as\":\"studies/light.toml\",\"version\":\"\"}"));
        assertThat(saved.at("/further/starts/0").asText()).isEqualTo("2");
        StudyFile file = StudyFile.read(served.workspace.resolve("studies/light.toml"));
        assertThat(file.kind()).isEqualTo(StudyFile.Kind.OPTIMISE);
        assertThat(file.further()).containsKeys("minimise", "starts");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "\"study\":\"optimise\",\"maximise\":[\"engine.cycle\"]; maximise is engine.cycle",
                "\"study\":\"optimise\"; number of objectives is 0",
                "\"study\":\"optimise\",\"maximise\":[\"isp_vacuum_s\"],\"subject_to\":[\"mass_kg<=1\",\"mass_kg>=2\"]; no value keeps both",
                "\"study\":\"optimise\",\"maximise\":[\"isp_vacuum_s\"],\"starts\":[\"many\"]; starts is many",
                "\"study\":\"sensitivity\"; figures is missing",
                "\"study\":\"sample\",\"points\":[\"1000000\"]; points is 1000000",
                "\"study\":\"sweep\",\"vary\":[\"engine.chamber_pressure=1..2MPa:3\"]; has a page of its own",
                "\"study\":\"dream\"; a study is one of compare"
            })
    void whatCannotBeAskedIsRefusedInASentence(String further, String told) {
        var answer = served.post("/api/search", "{" + CASE + "," + further + "}");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(served.json(answer).at("/problems/0").asText())
                .contains(told)
                .doesNotContain("--");
    }

    @Test
    void whatCanBeVariedAndAskedIsNamed() {
        JsonNode known = served.json(
                served.post("/api/search-choices", "{\"cases\":[\"vehicles/skerry.toml\"],\"changes\":{}}"));
        assertThat(known.path("inputs").findValuesAsText("path"))
                .contains("payload", "engines.heron.engine.chamber_pressure");
        assertThat(known.path("figures").findValuesAsText("path")).contains("start_mass_kg");
    }
}
