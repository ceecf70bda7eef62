package dev.penstock.app;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.penstock.app.console.Session;
import dev.penstock.input.HomeFolder;
import dev.penstock.reports.text.AnswerOrigin;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * A finished run of the command line.
 *
 * @param code exit code
 * @param out what went to standard output
 * @param err what went to the error stream
 */
record Run(int code, String out, String err) {

    static Run of(String... arguments) {
        return in(HomeFolder.find(), arguments);
    }

    /** With another folder of data. */
    static Run in(Path home, String... arguments) {
        return fed(home, "", arguments);
    }

    /** With text on standard input. */
    static Run fed(Path home, String text, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        InputStream in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        Session session = Session.open(home, in, new PrintWriter(out), new PrintWriter(err), false);
        int code = CommandLineProgram.run(session, arguments);
        return new Run(code, out.toString(), err.toString());
    }

    /** The answer in the one JSON document on standard output, without the line that asked for it. */
    JsonNode json() {
        return ((ObjectNode) document()).without(List.of(AnswerOrigin.COMMAND));
    }

    /** The one JSON document on standard output; fails if anything else is there. */
    JsonNode document() {
        ObjectMapper strict = new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
        try {
            return strict.readTree(out);
        } catch (JsonProcessingException e) {
            throw new AssertionError("not one JSON document: " + out, e);
        }
    }

    List<String> problems() {
        return err.lines().toList();
    }
}
