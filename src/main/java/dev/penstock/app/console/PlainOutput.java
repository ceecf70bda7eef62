package dev.penstock.app.console;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Text that leaves the program, in UTF-8. Control characters, which could change what a terminal shows or does, and marks
 * that turn the direction of reading leave as their code; line ends and tabs stay. The first failure to write is kept, since
 * a {@link java.io.PrintWriter} tells nobody.
 */
public final class PlainOutput extends Writer {

    private final Writer writer;
    private String failure;

    /** @param stream where the text goes */
    public PlainOutput(OutputStream stream) {
        this.writer = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
    }

    /** @return why some of the text is lost, if any is */
    public Optional<String> failure() {
        return Optional.ofNullable(failure);
    }

    @Override
    public void write(char[] text, int offset, int length) throws IOException {
        StringBuilder plain = new StringBuilder(length);
        for (int i = offset; i < offset + length; i++) {
            if (leaves(text[i])) {
                plain.append(text[i]);
            } else {
                plain.append(String.format("\\u%04x", (int) text[i]));
            }
        }
        guarded(() -> writer.write(plain.toString()));
    }

    private static boolean leaves(char c) {
        boolean direction = c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069';
        return c == '\n' || c == '\r' || c == '\t' || !Character.isISOControl(c) && !direction;
    }

    @Override
    public void flush() throws IOException {
        guarded(writer::flush);
    }

    @Override
    public void close() throws IOException {
        guarded(writer::close);
    }

    private void guarded(Writing work) throws IOException {
        try {
            work.run();
        } catch (IOException e) {
            failure = failure == null ? e.getMessage() : failure;
            throw e;
        }
    }

    @FunctionalInterface
    private interface Writing {
        void run() throws IOException;
    }
}
