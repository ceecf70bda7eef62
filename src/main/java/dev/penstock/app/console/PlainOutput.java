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
        int end = offset + length;
        int from = offset;
        for (int i = offset; i < end; i++) {
            if (!leaves(text[i])) {
                pass(text, from, i);
                String code = String.format("\\u%04x", (int) text[i]);
                guarded(() -> writer.write(code));
                from = i + 1;
            }
        }
        pass(text, from, end);
    }

    private void pass(char[] text, int from, int to) throws IOException {
        guarded(() -> writer.write(text, from, to - from));
    }

    private static boolean leaves(char c) {
        if (c >= ' ' && c <= '~') {
            return true;
        }
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
