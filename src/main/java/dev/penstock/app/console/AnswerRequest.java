package dev.penstock.app.console;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.penstock.app.options.OptionReader;
import dev.penstock.errors.InvalidInput;
import dev.penstock.input.InputFile;
import dev.penstock.input.Spelling;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * One question of another program, a JSON object on one line.
 *
 * @param command command that answers
 * @param named name or path of a case, if one is named
 * @param concept text of a concept file, if one is sent along
 * @param changes values by dotted path that replace or add to what the case says
 * @param options further words of the command line, as one would write them there
 */
public record AnswerRequest(
        String command,
        Optional<String> named,
        Optional<String> concept,
        Map<String, String> changes,
        List<String> options) {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String ID = "id";
    private static final String COMMAND = "command";
    private static final String CASE = "case";
    private static final String CONCEPT = "concept";
    private static final String SET = "set";
    private static final String OPTIONS = "options";
    private static final Set<String> FIELDS = Set.of(ID, COMMAND, CASE, CONCEPT, SET, OPTIONS);

    /**
     * @param line a line
     * @return the object on it
     * @throws InvalidInput if there is none
     */
    public static ObjectNode object(String line) {
        try {
            if (JSON.readTree(line) instanceof ObjectNode object) {
                return object;
            }
        } catch (JsonProcessingException e) {
            throw new InvalidInput(
                    "", "request", line, "write one JSON object on a line (" + e.getOriginalMessage() + ")");
        }
        throw new InvalidInput("", "request", line, "write one JSON object on a line");
    }

    /** @return what the sender calls the request, given back with the answer; null if nothing */
    public static JsonNode id(ObjectNode object) {
        return object.has(ID) ? object.get(ID) : NullNode.getInstance();
    }

    /**
     * @param object a request
     * @param commands commands that answer
     * @param outputs a command's options that say where an answer goes, which a request cannot
     * @return the request
     * @throws InvalidInput naming every field that cannot be used
     */
    public static AnswerRequest of(ObjectNode object, Set<String> commands, Function<String, Set<String>> outputs) {
        OptionReader reader = new OptionReader();
        object.fieldNames().forEachRemaining(name -> {
            if (!FIELDS.contains(name)) {
                reader.problem(
                        name,
                        object.get(name).toString(),
                        "fields of a request are " + String.join(", ", sorted(FIELDS)));
            }
        });
        String command = object.path(COMMAND).asText("");
        if (!commands.contains(command)) {
            String close = commands.stream()
                    .min(Comparator.comparingInt(name -> Spelling.distance(name, command)))
                    .orElseThrow();
            boolean near = Spelling.distance(close, command) <= 1 + command.length() / 3;
            reader.problem(
                    COMMAND,
                    object.has(COMMAND) ? command : "missing",
                    "allowed are " + String.join(", ", sorted(commands))
                            + (near ? "; did you mean " + close + "?" : ""));
        }
        Optional<String> named = Optional.empty();
        if (object.has(CASE)) {
            named = Optional.of(object.get(CASE).asText());
        }
        Optional<String> concept = object.has(CONCEPT) ? concept(object.get(CONCEPT), reader) : Optional.empty();
        if (named.isPresent() && object.has(CONCEPT)) {
            reader.problem(CASE, named.get(), "give either " + CASE + " or " + CONCEPT);
        }
        Map<String, String> changes = changes(object.path(SET), reader);
        Set<String> elsewhere = commands.contains(command) ? outputs.apply(command) : Set.of();
        List<String> options = options(object.path(OPTIONS), elsewhere, reader);
        reader.finish();
        return new AnswerRequest(command, named, concept, changes, options);
    }

    private static Optional<String> concept(JsonNode node, OptionReader reader) {
        try {
            if (node.isTextual() || node.isObject()) {
                return Optional.of(node.isTextual() ? node.asText() : InputFile.textOf(node));
            }
        } catch (JsonProcessingException e) {
            reader.problem(
                    CONCEPT,
                    node.toString(),
                    "it must hold what a concept file can hold (" + e.getOriginalMessage() + ")");
            return Optional.empty();
        }
        reader.problem(CONCEPT, node.toString(), "write the text of a concept file, or an object of its keys");
        return Optional.empty();
    }

    private static Map<String, String> changes(JsonNode node, OptionReader reader) {
        Map<String, String> changes = new LinkedHashMap<>();
        if (!node.isMissingNode() && !node.isObject()) {
            reader.problem(SET, node.toString(), "write an object of values by dotted path");
        }
        node.fields().forEachRemaining(entry -> {
            if (entry.getValue().isValueNode() && !entry.getValue().isNull()) {
                changes.put(entry.getKey(), entry.getValue().asText());
            } else {
                reader.problem(
                        SET + "." + entry.getKey(),
                        entry.getValue().toString(),
                        "write a text, a number, true or false");
            }
        });
        return changes;
    }

    private static List<String> options(JsonNode node, Set<String> elsewhere, OptionReader reader) {
        List<String> options = new ArrayList<>();
        if (!node.isMissingNode() && !node.isArray()) {
            reader.problem(OPTIONS, node.toString(), "write a list of texts");
        }
        for (JsonNode word : node) {
            String name = word.asText().replaceFirst("=.*", "");
            if (!word.isTextual()) {
                reader.problem(OPTIONS, word.toString(), "write a list of texts");
            } else if (elsewhere.contains(name)) {
                reader.problem(
                        OPTIONS,
                        word.asText(),
                        "a request is answered with JSON alone; leave it out, and give changes in " + SET);
            } else {
                options.add(word.asText());
            }
        }
        return options;
    }

    private static List<String> sorted(Set<String> names) {
        return names.stream().sorted().toList();
    }
}
