package dev.penstock.app.console;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.penstock.errors.InvalidInput;
import dev.penstock.provenance.KeyPath;
import dev.penstock.reports.text.AnswerOrigin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The outermost parts of a command's answer that a table can be made of, known before the command begins. */
final class AnswerParts {

    private final Set<String> parts = new TreeSet<>();

    /**
     * @param home home folder, with the published schemas
     * @param command name of a command that has one
     * @param further parts that the schema does not tell, since only some answers have them
     */
    AnswerParts(Path home, String command, Set<String> further) {
        Path schema = home.resolve(AnswerOrigin.schema(command));
        try {
            if (Files.exists(schema)) {
                JsonNode properties =
                        new ObjectMapper().readTree(schema.toFile()).path("properties");
                properties.properties().stream()
                        .filter(property -> hasLines(property.getValue().path("type")))
                        .forEach(property -> parts.add(property.getKey()));
                parts.addAll(further);
            }
        } catch (IOException e) {
            // without a schema the answer itself tells
            parts.clear();
        }
    }

    /** The type of a schema is one word, or a list of them. */
    private static boolean hasLines(JsonNode type) {
        return type.toString().contains("\"object\"") || type.toString().contains("\"array\"");
    }

    /**
     * @param path keys to a part, with dots between them
     * @throws InvalidInput if no answer has such a part
     */
    void check(String path) {
        List<String> keys = KeyPath.keys(path);
        if (!parts.isEmpty() && !keys.isEmpty() && !parts.contains(keys.get(0))) {
            throw new InvalidInput(
                    "", "--rows", path, "allowed are " + String.join(", ", parts) + ", and parts inside these");
        }
    }
}
