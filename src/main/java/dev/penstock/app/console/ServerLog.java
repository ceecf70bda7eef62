package dev.penstock.app.console;

import dev.penstock.errors.InvalidInput;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** A file to which a server adds a line for every request, and the trace of every defect. Safe for many threads. */
public final class ServerLog implements AutoCloseable {

    private final BufferedWriter file;
    private final PrintWriter err;
    private boolean broken;

    private ServerLog(BufferedWriter file, PrintWriter err) {
        this.file = file;
        this.err = err;
    }

    /**
     * @param path file, made if absent; what it holds stays
     * @param err told once if a line cannot be written
     * @return the log
     * @throws InvalidInput if the file cannot be written
     */
    public static ServerLog open(Path path, PrintWriter err) {
        try {
            return new ServerLog(
                    Files.newBufferedWriter(path, StandardOpenOption.CREATE, StandardOpenOption.APPEND), err);
        } catch (IOException e) {
            throw new InvalidInput("", "--log", path.toString(), "it must be a file that can be written (" + e + ")");
        }
    }

    /** @return a text in which control characters, such as those of an address, are shown as question marks */
    public static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}", "?");
    }

    /** @param text what happened */
    public void line(String text) {
        write(plain(text) + System.lineSeparator());
    }

    /** @param failure failure that should not happen */
    public void defect(Throwable failure) {
        StringWriter trace = new StringWriter();
        failure.printStackTrace(new PrintWriter(trace));
        write("defect " + trace);
    }

    private synchronized void write(String text) {
        try {
            file.write(Instant.now().truncatedTo(ChronoUnit.MILLIS) + " " + text);
            file.flush();
        } catch (IOException e) {
            if (!broken) {
                broken = true;
                err.println("penstock: the log cannot be written (" + e + "); lines are missing from now on");
                err.flush();
            }
        }
    }

    @Override
    public synchronized void close() {
        try {
            file.close();
        } catch (IOException e) {
            err.println("penstock: the log cannot be closed (" + e + ")");
        }
    }
}
