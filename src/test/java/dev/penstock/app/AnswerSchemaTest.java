package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.Session;
import dev.penstock.input.HomeFolder;
import dev.penstock.reports.text.AnswerOrigin;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The published schemas of answers: each is what the answers about the demos have in common. Rewritten with {@code -Dpenstock.docs.write=true}.
 * That of {@code judge}, whose answer takes longest, is held and rewritten by {@link JudgeCommandTest}.
 */
class AnswerSchemaTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private static Path folder;

    /** The transfer orbit's vehicle on its way to an escape. */
    private static Path escape() {
        try {
            String transfer = Files.readString(HomeFolder.find().resolve("docs/examples/transfer-orbit.toml"));
            String away = transfer.replace("perigee_altitude = \"180 km\"", "c3 = \"2 km2/s2\"")
                    .replaceAll("(?m)^apogee_altitude.*$", "");
            return Files.writeString(folder.resolve("escape.toml"), away);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Command lines by command; everything that answers but what serves or makes the whole demo. */
    private static Map<String, List<List<String>>> questions() {
        Map<String, List<List<String>>> all = new LinkedHashMap<>();
        List<List<String>> balances = new ArrayList<>();
        CaseFiles.in(HomeFolder.find().resolve("cycles"))
                .forEach(file -> balances.add(List.of("balance", file.toString())));
        balances.add(List.of("balance", "dunlin", "--uncertainty", "20"));
        all.put("balance", balances);
        all.put("limit", List.of(List.of("limit", "dunlin"), List.of("limit", "heron")));
        all.put(
                "off-design",
                List.of(
                        List.of("off-design", "heron", "--throttle", "1,0.05"),
                        List.of("off-design", "dunlin", "--throttle", "1", "--mixture-ratio", "1.5")));
        all.put(
                "table",
                List.of(
                        List.of("table", "dunlin", "--throttle", "1", "--altitude", "0..40km:3"),
                        List.of(
                                "table",
                                "heron",
                                "--throttle",
                                "1",
                                "--ambient-pressure",
                                "1bar",
                                "--mixture-ratio",
                                "2.34,45")));
        all.put("cool", List.of(List.of("cool", "heron", "--evaluations", "30")));
        all.put("compare", List.of(List.of("compare", "dunlin", "heron", "tern")));
        all.put("explain", List.of(List.of("explain", "heron"), List.of("explain", "heron", "engine.isp_vacuum_s")));
        String vary = "engine.chamber_pressure=8..9bar:2";
        all.put(
                "sweep",
                List.of(
                        List.of("sweep", "dunlin", "--vary", vary),
                        List.of("sweep", "dunlin", "--vary", vary, "--samples", "2")));
        all.put("nozzle", List.of(List.of("nozzle", "heron")));
        all.put(
                "start",
                List.of(List.of("start", "heron"), List.of("start", "heron", "--tank-head", "--speed", "0.3")));
        all.put("protect", List.of(List.of("protect", "heron", "--time", "0.5s")));
        all.put(
                "size",
                List.of(
                        List.of("size", "gannet"),
                        List.of("size", "skerry"),
                        List.of("size", "skerry", "--reuse"),
                        List.of("size", "skerry", "--cost"),
                        List.of("size", "gannet", "--uncertainty", "20"),
                        List.of("size", "skerry-boosted", "--fly"),
                        List.of("size", "docs/examples/transfer-orbit.toml", "--fly"),
                        List.of("size", escape().toString(), "--fly")));
        List<String> pair = List.of("trade", "skerry", "--pair", "oxygen/methane/3.4");
        all.put(
                "trade",
                List.of(
                        pair,
                        Stream.concat(pair.stream(), Stream.of("--uncertainty", "20"))
                                .toList()));
        all.put(
                "combust",
                List.of(List.of(
                        "combust",
                        "--oxidizer",
                        "oxygen",
                        "--fuel",
                        "methane",
                        "--mixture-ratio",
                        "3.4",
                        "--pressure",
                        "7MPa",
                        "--area-ratio",
                        "20")));
        all.put(
                "fluid",
                List.of(
                        List.of("fluid"),
                        List.of("fluid", "methane"),
                        List.of("fluid", "methane", "--pressure", "10MPa", "--temperature", "110K")));
        List<List<String>> lists = new ArrayList<>();
        for (String kind : List.of("fluids", "gas", "walls", "metals", "cycles", "limits", "figures", "inputs")) {
            lists.add(List.of("list", kind));
        }
        all.put("list", lists);
        String rows = folder.resolve("rows").toString();
        all.put(
                "sample",
                List.of(List.of(
                        "sample",
                        "dunlin",
                        "--vary",
                        "engine.chamber_pressure=0.8..1.2MPa",
                        "--points",
                        "4",
                        "--subject-to",
                        "within_limits",
                        "--out",
                        rows)));
        all.put("summary", List.of(List.of("study", "summary", rows)));
        String pressures = "engine.chamber_pressure=0.8..1.2MPa";
        String impulse = "isp_vacuum_s";
        all.put(
                "optimise",
                List.of(List.of(
                        "optimise",
                        "dunlin",
                        "--vary",
                        pressures,
                        "--maximise",
                        impulse,
                        "--starts",
                        "1",
                        "--evaluations",
                        "20")));
        all.put(
                "sensitivity",
                List.of(List.of(
                        "sensitivity", "dunlin", "--vary", pressures, "--figures", impulse, "--samples", "16")));
        all.put(
                "frontier",
                List.of(List.of(
                        "frontier",
                        "dunlin",
                        "--vary",
                        pressures,
                        "--minimise",
                        "engine.mass_kg",
                        "--maximise",
                        impulse,
                        "--population",
                        "8",
                        "--generations",
                        "2")));
        all.put(
                "new",
                List.of(
                        List.of("new"),
                        List.of(
                                "new",
                                "study",
                                folder.resolve("new-" + System.nanoTime() + ".toml")
                                        .toString())));
        return all;
    }

    private static String text(Map<String, Object> schema) throws IOException {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(schema).replace(System.lineSeparator(), "\n")
                + "\n";
    }

    private static JsonSchema schema(String command) throws IOException {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4)
                .getSchema(JSON.readTree(Path.of(AnswerOrigin.schema(command)).toFile()));
    }

    /** What is wrong with an answer of a command. */
    static List<String> faults(String command, JsonNode answer) throws IOException {
        return schema(command).validate(answer).stream().map(Object::toString).toList();
    }

    private static JsonNode answer(List<String> words) {
        List<String> all = new ArrayList<>(words);
        all.add("--json");
        return Run.of(all.toArray(String[]::new)).document();
    }

    private static Map<String, String> titles() {
        Map<String, String> titles = new LinkedHashMap<>();
        for (JsonNode figure : Run.of("list", "figures", "--json").json().get("entries")) {
            String key = figure.get("key").asText();
            String unit = figure.get("unit").asText();
            boolean plain = unit.isEmpty() || unit.equals("word");
            titles.putIfAbsent(
                    key.substring(key.lastIndexOf('.') + 1),
                    figure.get("title").asText() + (plain ? "" : " (" + unit + ")"));
        }
        return titles;
    }

    @TestFactory
    List<DynamicTest> everyAnswerIsValidAndNoKeyOfItIsUnknown() {
        List<DynamicTest> tests = new ArrayList<>();
        questions()
                .forEach((command, lines) -> tests.add(DynamicTest.dynamicTest(
                        command,
                        () -> hold(
                                command,
                                lines.stream().map(AnswerSchemaTest::answer).toList()))));
        return tests;
    }

    /** Holds answers of a command against its schema, or writes it anew from them. */
    static void hold(String command, List<JsonNode> answers) throws IOException {
        AnswerShape shape = new AnswerShape();
        answers.forEach(answer -> shape.add(answer, ""));
        Path file = Path.of(AnswerOrigin.schema(command));
        if (Boolean.getBoolean("penstock.docs.write")) {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("$schema", "http://json-schema.org/draft-04/schema#");
            schema.put("title", "What penstock " + command + " answers with --json");
            schema.putAll(shape.schema(titles()));
            Files.createDirectories(file.getParent());
            Files.writeString(file, text(schema));
        }
        JsonSchema published = schema(command);
        JsonNode described = JSON.readTree(file.toFile()).get("properties");
        for (JsonNode answer : answers) {
            assertThat(published.validate(answer)).isEmpty();
            assertThat(described.fieldNames()).toIterable().containsAll(answer::fieldNames);
            ObjectNode broken = answer.deepCopy();
            broken.remove("penstock_version");
            assertThat(published.validate(broken)).isNotEmpty();
            broken = answer.deepCopy();
            broken.put(AnswerOrigin.COMMAND, 3);
            assertThat(published.validate(broken)).isNotEmpty();
        }
    }

    @Test
    void anAnswerAboutAPageIsValid() throws IOException {
        Path page = folder.resolve("dunlin.html");
        assertThat(Run.of("balance", "dunlin", "--report", page.toString()).code())
                .isZero();
        assertThat(schema("reproduce").validate(answer(List.of("reproduce", page.toString()))))
                .isEmpty();
    }

    /** What an answer may hold, a schema tells; what serves, and what writes the whole demo, are no answers to ask in a test. */
    @Test
    void everyCommandThatAnswersHasASchema() {
        Session session = Session.open(
                HomeFolder.find(),
                InputStream.nullInputStream(),
                new PrintWriter(new StringWriter()),
                new PrintWriter(new StringWriter()),
                false);
        TreeSet<String> without = new TreeSet<>(
                CommandLineProgram.commandLine(session).getSubcommands().keySet());
        without.removeIf(command -> Files.exists(Path.of(AnswerOrigin.schema(command))));
        // a study answers as the command that it names
        assertThat(without).containsExactly("study");
    }

    @Test
    void answersToRequestsAreValid() throws IOException {
        String requests =
                "{\"id\": 1, \"command\": \"list\", \"case\": \"walls\"}\n{\"id\": \"x\", \"command\": \"balanc\"}\n";
        Run run = Run.fed(HomeFolder.find(), requests, "answer");
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSize(2);
        for (String line : lines) {
            assertThat(schema("answer").validate(JSON.readTree(line))).isEmpty();
        }
        assertThat(schema("answer").validate(JSON.readTree("{\"id\": 1, \"exit_code\": 2}")))
                .isNotEmpty();
    }
}
