package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ExitCode;
import dev.penstock.reports.page.ReportRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A page holds all that it takes to make it again. */
class ReproductionTest {

    private static final Pattern RECORD = Pattern.compile("data:application/json;base64,([A-Za-z0-9+/=]+)");

    /** What the demo writes, and nothing else. */
    @TempDir
    static Path folder;

    /** What the tests make of it. */
    @TempDir
    static Path elsewhere;

    private static Run run;

    @BeforeAll
    static void demo() {
        run = Run.of("demo", "--output", folder.toString(), "--without-claims");
        assertThat(run.code()).as(run.err()).isZero();
    }

    @Test
    void theDemoNamesEveryPageAndTellsHowFarItIs() {
        List<Path> concepts = CaseFiles.in(Path.of("cycles"));
        int vehicles = CaseFiles.in(Path.of("cycles/vehicles")).size();
        assertThat(folder.toFile().listFiles())
                .hasSize(concepts.size() + vehicles + 1)
                .allSatisfy(page -> assertThat(run.out()).contains("wrote " + page));
        // one line for each concept balanced and each page drawn
        assertThat(run.problems()).hasSize(2 * concepts.size()).allMatch(line -> line.matches("\\[\\d+/\\d+] .+"));
    }

    @TestFactory
    List<DynamicTest> thePageOfEveryDemoConceptGivesEveryNumberAgain() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path concept : CaseFiles.in(Path.of("cycles"))) {
            String name = concept.getFileName().toString().replace(".toml", "");
            tests.add(DynamicTest.dynamicTest(name, () -> {
                Run fromFile = Run.of("balance", name, "--json");
                Run fromPage = Run.of("balance", folder.resolve(name + ".html").toString(), "--json");
                assertThat(fromPage.err()).isEmpty();
                assertThat(fromPage.json()).isEqualTo(fromFile.json());
                assertThat(numbers(fromPage.json())).isGreaterThan(100);
            }));
        }
        return tests;
    }

    private static int numbers(JsonNode node) {
        if (node.isNumber()) {
            return 1;
        }
        int count = 0;
        for (JsonNode child : node) {
            count += numbers(child);
        }
        return count;
    }

    @TestFactory
    List<DynamicTest> thePageOfEveryDemoVehicleAndTheComparisonAreMadeAgain() {
        List<String> pages = new ArrayList<>(List.of("comparison.html"));
        CaseFiles.in(Path.of("cycles/vehicles"))
                .forEach(v -> pages.add("vehicle-" + v.getFileName().toString().replace(".toml", ".html")));
        return pages.stream()
                .map(page -> DynamicTest.dynamicTest(page, () -> {
                    Run run = Run.of("reproduce", folder.resolve(page).toString(), "--json");
                    assertThat(run.code()).as(run.err()).isZero();
                    assertThat(run.err()).isEmpty();
                    assertThat(run.json().get("same").asBoolean()).isTrue();
                    assertThat(run.json().get("numbers").asInt()).isGreaterThan(50);
                }))
                .toList();
    }

    @Test
    void aPrintGivesEveryNumberAgainWithTheChangesItWasMadeWith() {
        Path print = elsewhere.resolve("changed.pdf");
        String change = "engine.chamber_pressure=7.5 MPa";
        Run made = Run.of(
                "off-design", "heron", "--throttle", "1,0.9", "--set", change, "--report", print.toString(), "--json");
        assertThat(made.code()).as(made.err()).isZero();
        Run again = Run.of("off-design", print.toString(), "--throttle", "1,0.9", "--json");
        assertThat(again.json()).isEqualTo(made.json());
        Run whole = Run.of("reproduce", print.toString());
        assertThat(whole.code()).as(whole.out()).isZero();
        assertThat(whole.out())
                .contains("penstock off-design heron.toml --throttle 1,0.9 --set '" + change + "'")
                .contains("numbers, all the same");
    }

    /** An option that stands twice stands twice in the page's record, wherever the case lay. */
    @Test
    void aStudyOfTwoInputsIsMadeAgain() {
        List<String> vary =
                List.of("--vary", "engine.chamber_pressure=0.9..1.1MPa", "--vary", "nozzle.area_ratio=60..80");
        List<String> optimise = new ArrayList<>(List.of("optimise", "dunlin", "--maximise", "isp_vacuum_s"));
        optimise.addAll(List.of("--starts", "1", "--evaluations", "20"));
        List<String> frontier = new ArrayList<>(List.of("frontier", "dunlin", "--maximise", "isp_vacuum_s"));
        frontier.addAll(List.of("--minimise", "engine.mass_kg", "--population", "8", "--generations", "2"));
        List<String> sweep = new ArrayList<>(List.of("sweep", "dunlin"));
        for (List<String> study : List.of(optimise, frontier)) {
            study.addAll(vary);
        }
        vary.forEach(word -> sweep.add(word.startsWith("--") ? word : word + ":2"));
        for (List<String> study : List.of(optimise, frontier, sweep)) {
            Path page = elsewhere.resolve(study.get(0) + "-two.html");
            study.addAll(List.of("--report", page.toString()));
            assertThat(Run.of(study.toArray(String[]::new)).code()).isZero();
            Run again = Run.of("reproduce", page.toString());
            assertThat(again.out()).as(again.err()).contains("numbers, all the same");
        }
    }

    /** Drawings for an audience are no part of what made a page, and a page cannot ask for them. */
    @Test
    void drawingsAreNotWrittenAgain() throws IOException {
        Path page = elsewhere.resolve("drawn.html");
        Path drawings = elsewhere.resolve("drawn");
        assertThat(Run.of("balance", "dunlin", "--figures", drawings.toString(), "--report", page.toString())
                        .code())
                .isZero();
        assertThat(drawings).isNotEmptyDirectory();
        assertThat(Run.of("reproduce", page.toString()).out())
                .contains("numbers, all the same")
                .doesNotContain("--figures");
        Path asking = rewritten(
                "asking.html", json -> json.replaceFirst("\"options\" : \\[ ?", "$0\"--figures\", \"elsewhere\""));
        assertThat(Run.of("reproduce", asking.toString()).err())
                .contains("--figures", "options of a page must be such");
    }

    @Test
    void aFurtherChangeComesAfterThoseOfThePage() {
        Path page = elsewhere.resolve("dunlin-8bar.html");
        Run.of("balance", "dunlin", "--set", "engine.chamber_pressure=8bar", "--report", page.toString());
        JsonNode same = Run.of("balance", page.toString(), "--json").json();
        assertThat(same.at("/engine/chamber_pressure_Pa").asDouble()).isEqualTo(8e5);
        JsonNode other = Run.of("balance", page.toString(), "--set", "engine.chamber_pressure=9bar", "--json")
                .json();
        assertThat(other.at("/engine/chamber_pressure_Pa").asDouble()).isEqualTo(9e5);
    }

    @Test
    void otherDataAreToldByName() throws IOException {
        Path page = rewritten("data.html", json -> json.replaceAll(
                        "(\"fluids/nitrogen-tetroxide.toml\" : \")[0-9a-f]{12}", "$1000000000000")
                .replaceAll("(\"coolprop\" : \")[^\"]*", "$17.0.0"));
        Run run = Run.of("balance", page.toString());
        assertThat(run.code()).isZero();
        assertThat(run.err())
                .contains("numbers may differ")
                .contains("fluids/nitrogen-tetroxide.toml was 000000000000")
                .contains("made with CoolProp 7.0.0")
                .doesNotContain("fluids/oxygen.toml");
    }

    @Test
    void aNumberThatMovedIsShown() throws IOException {
        Path page = elsewhere.resolve("moved.html");
        String html = Files.readString(folder.resolve("dunlin.html"));
        Files.writeString(page, html.replaceFirst("(isp_vacuum_s\">)[0-9.]+", "$1399.9"));
        Run run = Run.of("reproduce", page.toString());
        assertThat(run.code()).isEqualTo(ExitCode.NO_SOLUTION);
        assertThat(run.out()).contains("1 places differ").containsPattern("399\\.9 is now 3\\d\\d\\.\\d");
    }

    @Test
    void aPageFromElsewhereStartsNothingAndLeadsNowhere() throws IOException {
        Path command = rewritten("command.html", json -> json.replace("\"balance\"", "\"serve\""));
        assertThat(Run.of("reproduce", command.toString()).err()).contains("makes no page");
        Path outside = rewritten("outside.html", json -> json.replace("\"dunlin.toml\"", "\"../dunlin.toml\""));
        assertThat(Run.of("balance", outside.toString()).err()).contains("outside its own folder");
        Path none = Files.writeString(elsewhere.resolve("none.html"), "<html><body>nothing</body></html>");
        Run run = Run.of("balance", none.toString());
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.err()).contains("wrote with --report");
    }

    @Test
    void aRecordSurvivesAnyText() {
        ReportRecord record = ReportRecord.in(read("dunlin.html")).orElseThrow();
        ReportRecord odd = new ReportRecord(
                "balance",
                List.of("--throttle", "it's </footer> \"so\""),
                java.util.Map.of("name", "a<b>&c"),
                List.of("odd.toml"),
                java.util.Map.of("odd.toml", "name = \"Ōdd ² </footer><script>\"\r\n"),
                record.software());
        String page = odd.addTo(read("dunlin.html").replaceAll("(?s)<a id=\"record\".*?</a>", ""));
        assertThat(ReportRecord.in(page)).contains(odd);
        assertThat(page).doesNotContain("<script>");
    }

    private static String read(String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Path rewritten(String name, UnaryOperator<String> change) throws IOException {
        String html = read("dunlin.html");
        Matcher matcher = RECORD.matcher(html);
        assertThat(matcher.find()).isTrue();
        String json = new String(Base64.getDecoder().decode(matcher.group(1)), StandardCharsets.UTF_8);
        String changed = change.apply(json);
        assertThat(changed).isNotEqualTo(json);
        String data = Base64.getEncoder().encodeToString(changed.getBytes(StandardCharsets.UTF_8));
        return Files.writeString(
                elsewhere.resolve(name), html.substring(0, matcher.start(1)) + data + html.substring(matcher.end(1)));
    }
}
