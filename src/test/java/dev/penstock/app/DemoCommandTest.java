package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Everything in {@code cycles/} but its stories about engines with pumps, which take minutes to judge: with
 * {@code -Dpenstock.claims.long=true} (docs/decisions/0234-stories-of-the-demo-are-judged-at-wish.md).
 */
class DemoCommandTest {

    private static final Path HOME = HomeFolder.find();

    @TempDir
    Path folder;

    @Test
    void everyConceptAndVehicleHasAPageWithoutAnythingFromOutsideAndTheDocumentTellsOfThem() throws Exception {
        Run run = Run.of("demo", "--without-claims", "--output", folder.toString(), "--json");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(AnswerSchemaTest.faults("demo", run.document())).isEmpty();
        int concepts = CaseFiles.in(HOME.resolve("cycles")).size();
        int vehicles = CaseFiles.in(HOME.resolve("cycles/vehicles")).size();
        assertThat(run.json().get("concepts")).hasSize(concepts);
        assertThat(run.json().get("vehicles")).hasSize(vehicles);
        assertThat(run.json().get("claims")).isEmpty();
        List<Path> pages = pages();
        assertThat(pages).hasSize(concepts + vehicles + 1).contains(folder.resolve("heron.html"));
        for (Path page : pages) {
            nothingFromOutside(page);
        }
    }

    @Test
    void everyStoryOfTheDemoCanBeRead() {
        ClaimsReader reader = new ClaimsReader(FluidLibrary.open());
        assertThat(CaseFiles.in(HOME.resolve("cycles/claims")))
                .hasSizeGreaterThan(2)
                .allSatisfy(
                        file -> assertThat(reader.read(file, Map.of()).claims()).isNotEmpty());
    }

    /** One concept and one story, of two kinds of engine without pumps: its claims are on inputs, and nothing forbids them. */
    @Test
    void aStoryIsJudgedAndHasAPageInTheDemo() throws Exception {
        Path home = Files.createDirectories(folder.resolve("home"));
        Path claims = Files.createDirectories(home.resolve("cycles/claims"));
        Files.copy(HOME.resolve("cycles/dunlin.toml"), home.resolve("cycles/dunlin.toml"));
        Files.writeString(
                claims.resolve("knot.toml"),
                """
                name = "Knot, as told"
                cycle = "pressure-fed"
                [propellants]
                oxidizer = "oxygen"
                fuel = ["methane", "propane"]
                [claims."engine.chamber_pressure"]
                value = "1.5 MPa"
                within = "0.2 MPa"
                [claims."nozzle.area_ratio"]
                value = 60
                within = 5
                [given]
                "engine.thrust_vacuum" = "40 kN"
                """);
        List<String> data = List.of("fluids", ".penstock");
        for (String name : data) {
            Files.createSymbolicLink(home.resolve(name), HOME.resolve(name));
        }
        try {
            Run run = Run.in(home, "demo", "--output", folder.toString(), "--json");
            assertThat(run.code()).as(run.err()).isZero();
            assertThat(AnswerSchemaTest.faults("demo", run.document())).isEmpty();
            assertThat(run.json().get("claims")).hasSize(1);
            JsonNode claim = run.json().get("claims").get(0);
            assertThat(claim.get("name").asText()).isEqualTo("Knot, as told");
            assertThat(claim.get("verdict").asText()).isEqualTo("consistent");
            List<String> pairs = new ArrayList<>();
            double sum = 0;
            for (JsonNode kind : claim.get("propellants")) {
                pairs.add(kind.get("pair").asText());
                sum += kind.get("probability").asDouble();
            }
            assertThat(pairs).containsExactlyInAnyOrder("oxygen / methane", "oxygen / propane");
            assertThat(sum).isCloseTo(1, within(1e-12));
            assertThat(pages()).hasSize(3).contains(folder.resolve("dunlin.html"));
            nothingFromOutside(folder.resolve("knot-as-told-judged.html"));
        } finally {
            for (String name : data) {
                Files.delete(home.resolve(name)); // the links lead out of the folder that is deleted
            }
        }
    }

    @Test
    @EnabledIfSystemProperty(named = "penstock.claims.long", matches = "true")
    void theWholeDemoJudgesItsStories() throws Exception {
        Run run = Run.of("demo", "--output", folder.toString(), "--json");
        assertThat(AnswerSchemaTest.faults("demo", run.document())).isEmpty();
        Map<String, String> verdicts = new HashMap<>();
        run.json()
                .get("claims")
                .forEach(c ->
                        verdicts.put(c.get("name").asText(), c.get("verdict").asText()));
        assertThat(verdicts)
                .hasSize(CaseFiles.in(HOME.resolve("cycles/claims")).size())
                .containsEntry("Petrel upper stage, as announced", "consistent")
                .containsEntry("Shearwater, as told", "contradicted");
        assertThat(pages())
                .contains(folder.resolve("shearwater-as-told-judged.html"))
                .hasSize(run.json().get("concepts").size()
                        + run.json().get("vehicles").size()
                        + verdicts.size()
                        + 1);
        for (Path page : pages()) {
            nothingFromOutside(page);
        }
    }

    private List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".html")).toList();
        }
    }

    /** Asks for nothing but itself. */
    static void nothingFromOutside(Path page) throws IOException {
        String html = Files.readString(page);
        assertThat(html).as("%s", page).endsWith("</html>\n").doesNotContain("http://www.w3.org/1999/xlink");
        assertThat(html.replace("http://www.w3.org/2000/svg", ""))
                .as("%s", page)
                .doesNotContain("http:", "https:", "<script", "<link", "@import");
    }

    @Test
    void theSameInputsGiveTheSamePages() throws Exception {
        Run.of("compare", "heron", "--report", folder.resolve("a").toString());
        Run.of("compare", "heron", "--report", folder.resolve("b").toString());
        assertThat(Files.readString(folder.resolve("a/heron.html")))
                .isEqualTo(Files.readString(folder.resolve("b/heron.html")));
    }
}
