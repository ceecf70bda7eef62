package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import dev.penstock.input.HomeFolder;
import dev.penstock.reports.text.AnswerOrigin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnswerCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static List<JsonNode> answers(String... requests) {
        Run run = Run.fed(HomeFolder.find(), String.join("\n", requests), "answer");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        return run.out()
                .lines()
                .map(line -> {
                    try {
                        return JSON.readTree(line);
                    } catch (JsonProcessingException e) {
                        throw new AssertionError("not JSON: " + line, e);
                    }
                })
                .toList();
    }

    private static List<String> problems(JsonNode answer) {
        return IntStream.range(0, answer.get("problems").size())
                .mapToObj(i -> answer.get("problems").get(i).asText())
                .toList();
    }

    @Test
    void aRequestIsAnsweredAsTheCommandAnswers() {
        JsonNode answer = answers("{\"id\": 7, \"command\": \"balance\", \"case\": \"heron\","
                        + " \"set\": {\"engine.chamber_pressure\": \"9 MPa\", \"nozzle.area_ratio\": 18}}")
                .get(0);
        assertThat(answer.get("id").asInt()).isEqualTo(7);
        assertThat(answer.get("exit_code").asInt()).isZero();
        Run run = Run.of(
                "balance",
                "heron",
                "--json",
                "--set",
                "engine.chamber_pressure=9 MPa",
                "--set",
                "nozzle.area_ratio=18");
        assertThat(withoutCommand(answer)).isEqualTo(run.json());
    }

    @Test
    void aConceptIsSentAsTextOrAsAnObject() throws IOException {
        Path file = HomeFolder.find().resolve("cycles/avocet.toml");
        String text = Files.readString(file);
        JsonNode object = new TomlMapper().readTree(text);
        List<JsonNode> answers = answers(
                "{\"command\": \"balance\", \"concept\": " + JSON.writeValueAsString(text) + "}",
                "{\"command\": \"balance\", \"concept\": " + JSON.writeValueAsString(object) + "}",
                "{\"command\": \"balance\", \"case\": \"avocet\"}");
        assertThat(answers.get(0).get("exit_code").asInt()).isZero();
        assertThat(withoutCommand(answers.get(0))).isEqualTo(withoutCommand(answers.get(2)));
        assertThat(withoutCommand(answers.get(1))).isEqualTo(withoutCommand(answers.get(2)));
    }

    /** The answer to a request, whatever the request was written like. */
    private static JsonNode withoutCommand(JsonNode answered) {
        return ((ObjectNode) answered.get("answer")).without(List.of(AnswerOrigin.COMMAND));
    }

    @Test
    void errorsAreAnsweredInPlaceAndTheNextRequestIsServed() {
        List<JsonNode> answers = answers(
                "no JSON",
                "",
                "{\"id\": \"a\", \"command\": \"balanc\", \"case\": \"heron\", \"sett\": 1}",
                "{\"id\": \"b\", \"command\": \"balance\", \"case\": \"heron\", \"set\": {\"engine.chamber_pressure\": \"-1 MPa\"}}",
                "{\"id\": \"c\", \"command\": \"balance\", \"case\": \"heron\", \"options\": [\"--report\", \"x\"]}",
                "{\"id\": \"d\"}",
                "{\"id\": \"e\", \"command\": \"fluid\", \"case\": \"methane\"}");
        assertThat(answers).hasSize(6);
        assertThat(answers.get(0).get("id").isNull()).isTrue();
        assertThat(answers.get(0).get("exit_code").asInt()).isEqualTo(2);
        assertThat(problems(answers.get(1)))
                .hasSize(2)
                .anyMatch(p -> p.contains("sett") && p.contains("fields of a request are"))
                .anyMatch(p -> p.contains("did you mean balance?"));
        assertThat(problems(answers.get(2)))
                .singleElement()
                .asString()
                .contains("engine.chamber_pressure", "-1 MPa", "allowed");
        assertThat(problems(answers.get(3))).anyMatch(p -> p.contains("--report"));
        assertThat(answers.get(4).get("exit_code").asInt()).isEqualTo(2);
        assertThat(answers.get(5).get("exit_code").asInt()).isZero();
    }

    /** Neither a file nor a folder is written because a request says so. */
    @Test
    void aRequestCannotSayWhereAnAnswerGoes() {
        for (String option : List.of("--figures", "--diagram", "--report=x", "--with-trail")) {
            JsonNode answer = answers(
                            "{\"command\": \"balance\", \"case\": \"heron\", \"options\": [\"" + option + "\", \"x\"]}")
                    .get(0);
            assertThat(answer.get("exit_code").asInt()).as(option).isEqualTo(2);
            assertThat(problems(answer)).singleElement().asString().contains(option, "answered with JSON alone");
        }
        assertThat(problems(answers("{\"command\": \"sample\", \"case\": \"dunlin\"}")
                        .get(0)))
                .anyMatch(p -> p.contains("sample"));
    }

    @Test
    void aQuestionWithoutASolutionSaysSo() {
        JsonNode answer = answers("{\"id\": 1, \"command\": \"balance\", \"case\": \"heron\","
                        + " \"set\": {\"engine.chamber_pressure\": \"90 MPa\"}}")
                .get(0);
        assertThat(answer.get("exit_code").asInt()).isEqualTo(1);
        assertThat(problems(answer)).isNotEmpty();
        assertThat(answer.has("answer")).isFalse();
    }

    @Test
    void aRequestBeyondAllBoundsIsRefusedAndReadToItsEnd() {
        List<JsonNode> answers = answers(
                "{\"id\": 1, \"command\": \"" + "x".repeat(5 << 20) + "\"}", "{\"id\": 2, \"command\": \"fluid\"}");
        assertThat(problems(answers.get(0))).singleElement().asString().contains("a request may hold");
        assertThat(answers.get(1).get("exit_code").asInt()).isZero();
    }

    @Test
    void answersComeInTheOrderOfTheRequestsWhicheverIsReadyFirst() {
        String[] requests = IntStream.range(0, 12)
                .mapToObj(i -> i % 3 == 0
                        ? "{\"id\": " + i + ", \"command\": \"balance\", \"case\": \"avocet\"}"
                        : "{\"id\": " + i + ", \"command\": \"list\", \"case\": \"cycles\"}")
                .toArray(String[]::new);
        List<JsonNode> answers = answers(requests);
        assertThat(answers.stream().map(a -> a.get("id").asInt()))
                .containsExactlyElementsOf(IntStream.range(0, 12).boxed().toList());
        assertThat(answers).allMatch(a -> a.get("exit_code").asInt() == 0);
        assertThat(answers.get(9).get("answer")).isEqualTo(answers.get(0).get("answer"));
    }

    @Test
    void aSampleThatIsBegunIsNotGoneOnWith(@TempDir Path folder) throws IOException {
        Files.writeString(
                folder.resolve("study.toml"),
                "name = \"A\"\nstudy = \"sample\"\ncases = [\""
                        + HomeFolder.find().resolve("cycles/avocet.toml")
                        + "\"]\npoints = 4\nvary = [\"engine.chamber_pressure=1..2MPa\"]\n");
        Files.writeString(folder.resolve("schema.json"), "{}");
        JsonNode answer = answers("{\"command\": \"study\", \"case\": \"" + folder.resolve("study.toml") + "\"}")
                .get(0);
        assertThat(answer.get("exit_code").asInt()).isEqualTo(2);
        assertThat(problems(answer).get(0)).startsWith("command is sample; a request may not write on this machine");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(2);
        }
    }

    @Test
    void aConceptSentAlongIsNamedWithoutTheFolderItLayIn() {
        JsonNode answer = answers("{\"command\": \"balance\", \"concept\": \"name = \\\"A\\\"\\nbogus = 3\\n\"}")
                .get(0);
        assertThat(problems(answer)).anyMatch(p -> p.startsWith("concept.toml:2: bogus is not a known key"));
    }
}
