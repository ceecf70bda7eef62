package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.app.console.CaseFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {

    @TempDir
    Path folder;

    @Test
    void everyConceptAndVehicleHasAPageWithoutAnythingFromOutsideAndTheDocumentTellsOfThemAndTheClaims()
            throws Exception {
        Run run = Run.of("demo", "--output", folder.toString(), "--json");
        assertThat(AnswerSchemaTest.faults("demo", run.document())).isEmpty();
        int concepts = CaseFiles.in(Path.of("cycles")).size();
        int vehicles = CaseFiles.in(Path.of("cycles/vehicles")).size();
        int claims = CaseFiles.in(Path.of("cycles/claims")).size();
        assertThat(run.json().get("concepts")).hasSize(concepts);
        assertThat(run.json().get("vehicles")).hasSize(vehicles);
        Map<String, String> verdicts = new HashMap<>();
        run.json()
                .get("claims")
                .forEach(c ->
                        verdicts.put(c.get("name").asText(), c.get("verdict").asText()));
        assertThat(verdicts)
                .hasSize(claims)
                .containsEntry("Petrel upper stage, as announced", "consistent")
                .containsEntry("Shearwater, as told", "contradicted");
        List<Path> pages = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> file.toString().endsWith(".html")).forEach(pages::add);
        }
        assertThat(pages)
                .hasSize(concepts + vehicles + claims + 1)
                .contains(folder.resolve("shearwater-as-told-judged.html"));
        for (Path page : pages) {
            String html = Files.readString(page);
            assertThat(html).as("%s", page).endsWith("</html>\n").doesNotContain("http://www.w3.org/1999/xlink");
            assertThat(html.replace("http://www.w3.org/2000/svg", ""))
                    .as("%s", page)
                    .doesNotContain("http:", "https:", "<script", "<link", "@import");
        }
    }

    @Test
    void theSameInputsGiveTheSamePages() throws Exception {
        Run.of("compare", "heron", "--report", folder.resolve("a").toString());
        Run.of("compare", "heron", "--report", folder.resolve("b").toString());
        assertThat(Files.readString(folder.resolve("a/heron.html")))
                .isEqualTo(Files.readString(folder.resolve("b/heron.html")));
    }
}
