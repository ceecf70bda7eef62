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
    void everyConceptAndVehicleHasAPageWithoutAnythingFromOutside() throws Exception {
        Run run = Run.of("demo", "--output", folder.toString(), "--without-claims");
        assertThat(run.code()).as(run.err()).isZero();
        List<Path> concepts = CaseFiles.in(Path.of("cycles"));
        List<Path> vehicles = CaseFiles.in(Path.of("cycles/vehicles"));
        List<Path> pages = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.forEach(pages::add);
        }
        assertThat(pages).hasSize(concepts.size() + vehicles.size() + 1);
        for (Path page : pages) {
            String html = Files.readString(page);
            assertThat(html).as("%s", page).endsWith("</html>\n").doesNotContain("http://www.w3.org/1999/xlink");
            assertThat(html.replace("http://www.w3.org/2000/svg", ""))
                    .as("%s", page)
                    .doesNotContain("http:", "https:", "<script", "<link", "@import");
            assertThat(run.out()).contains("wrote " + page);
        }
        // one line for each concept balanced and each page drawn
        assertThat(run.problems()).hasSize(2 * concepts.size()).allMatch(line -> line.matches("\\[\\d+/\\d+] .+"));
    }

    @Test
    void theDocumentHasConceptsAndVehiclesAndWhatBecameOfTheClaims() throws Exception {
        Run run = Run.of("demo", "--output", folder.toString(), "--json");
        assertThat(AnswerSchemaTest.faults("demo", run.document())).isEmpty();
        assertThat(run.json().get("concepts"))
                .hasSize(CaseFiles.in(Path.of("cycles")).size());
        assertThat(run.json().get("vehicles"))
                .hasSize(CaseFiles.in(Path.of("cycles/vehicles")).size());
        Map<String, String> verdicts = new HashMap<>();
        run.json()
                .get("claims")
                .forEach(c ->
                        verdicts.put(c.get("name").asText(), c.get("verdict").asText()));
        assertThat(verdicts)
                .hasSize(CaseFiles.in(Path.of("cycles/claims")).size())
                .containsEntry("Petrel upper stage, as announced", "consistent")
                .containsEntry("Shearwater, as told", "contradicted");
        assertThat(Files.exists(folder.resolve("shearwater-as-told-judged.html")))
                .isTrue();
    }

    @Test
    void theSameInputsGiveTheSamePages() throws Exception {
        Run.of("compare", "heron", "--report", folder.resolve("a").toString());
        Run.of("compare", "heron", "--report", folder.resolve("b").toString());
        assertThat(Files.readString(folder.resolve("a/heron.html")))
                .isEqualTo(Files.readString(folder.resolve("b/heron.html")));
    }
}
