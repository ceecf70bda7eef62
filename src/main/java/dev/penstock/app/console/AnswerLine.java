package dev.penstock.app.console;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.penstock.reports.text.JsonText;
import java.io.CharArrayWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * What is answered to a request.
 *
 * @param id what the request called itself
 * @param exitCode exit code of its command
 * @param answer the document that it made; nothing where the exit code is not 0
 * @param problems sentences where it is not
 */
public record AnswerLine(JsonNode id, int exitCode, Map<String, Object> answer, List<String> problems) {

    private static final ObjectMapper NODES = new ObjectMapper();

    /** About as much as the balance of an engine has to say. */
    private static final int USUAL = 1 << 17;

    /** @return one line of JSON, with its end: written once, since it may be long */
    public char[] text() {
        CharArrayWriter text = new CharArrayWriter(USUAL);
        try (JsonGenerator generator = JsonText.generator(text)) {
            generator.setCodec(NODES);
            generator.writeStartObject();
            generator.writeFieldName("id");
            generator.writeTree(id);
            generator.writeNumberField("exit_code", exitCode);
            if (exitCode == ExitCode.OK) {
                generator.writeFieldName("answer");
                JsonText.write(generator, answer);
            } else {
                generator.writeFieldName("problems");
                JsonText.write(generator, problems);
            }
            generator.writeEndObject();
            generator.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toCharArray();
    }
}
