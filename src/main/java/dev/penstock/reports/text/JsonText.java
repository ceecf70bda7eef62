package dev.penstock.reports.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Map;
import java.util.Optional;

/** Writes maps, lists, numbers and texts as one JSON document. Numbers keep every digit; none may be NaN or infinite. */
public final class JsonText {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .build();

    private JsonText() {}

    /**
     * @param document maps with text keys, iterables, texts, numbers, booleans; an empty optional is null
     * @return the document, indented, ended by a line break
     * @throws IllegalStateException if a number is not finite or a value is of another kind (a defect in the caller)
     */
    public static String of(Map<String, ?> document) {
        return of(document, Optional.of(indented())) + '\n';
    }

    /**
     * @param document as above
     * @return the document without a blank between its parts, for programs alone
     * @throws IllegalStateException as above
     */
    public static String compact(Map<String, ?> document) {
        return of(document, Optional.empty());
    }

    private static PrettyPrinter indented() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(indenter);
        printer.indentObjectsWith(indenter);
        return printer;
    }

    private static String of(Map<String, ?> document, Optional<PrettyPrinter> printer) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = generator(text)) {
            printer.ifPresent(generator::setPrettyPrinter);
            write(generator, document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /**
     * @param text where JSON goes
     * @return what writes it there without a blank between its parts
     * @throws IOException if nothing can be written there
     */
    public static JsonGenerator generator(Writer text) throws IOException {
        return FACTORY.createGenerator(text);
    }

    /**
     * @param generator where a document has room for a value
     * @param value a part of a document, as above
     * @throws IOException if it cannot be written
     * @throws IllegalStateException as above
     */
    public static void write(JsonGenerator generator, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            generator.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                generator.writeFieldName(entry.getKey().toString());
                write(generator, entry.getValue());
            }
            generator.writeEndObject();
        } else if (value instanceof Iterable<?> list) {
            generator.writeStartArray();
            for (Object element : list) {
                write(generator, element);
            }
            generator.writeEndArray();
        } else if (value instanceof Double number) {
            if (!Double.isFinite(number)) {
                throw new IllegalStateException(place(generator) + " is " + number);
            }
            generator.writeNumber(number);
        } else if (value instanceof Integer number) {
            generator.writeNumber(number);
        } else if (value instanceof Optional<?> optional) {
            if (optional.isPresent()) {
                write(generator, optional.get());
            } else {
                generator.writeNull();
            }
        } else if (value instanceof Boolean flag) {
            generator.writeBoolean(flag);
        } else if (value instanceof String string) {
            generator.writeString(string);
        } else {
            throw new IllegalStateException(place(generator) + " is a " + (value == null ? "null" : value.getClass()));
        }
    }

    /** Where the document is written at, as a JSON pointer (RFC 6901). */
    private static String place(JsonGenerator generator) {
        return generator.getOutputContext().pathAsPointer().toString();
    }
}
