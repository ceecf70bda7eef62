package dev.penstock.app;

import dev.penstock.reports.JsonText;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** What all commands share: help, the choice of output, and the trace for defects. */
abstract class BaseCommand implements Callable<Integer> {

    protected final Session session;

    @Option(names = "--json", description = "print one JSON document, in SI units, and nothing else")
    private boolean json;

    @Option(names = "--verbose", description = "print the trace when something fails")
    private boolean verbose;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this text")
    private boolean help;

    BaseCommand(Session session) {
        this.session = session;
    }

    protected boolean json() {
        return json;
    }

    /** @return lines that say which files were written; empty text for none */
    protected static String written(List<Path> files) {
        StringBuilder text = new StringBuilder();
        files.forEach(file -> text.append(text.isEmpty() ? System.lineSeparator() : "")
                .append("wrote ")
                .append(file)
                .append(System.lineSeparator()));
        return text.toString();
    }

    /** Prints the answer in the form that was asked for. */
    protected int answer(Supplier<Map<String, Object>> document, Supplier<String> text) {
        session.out().print(json ? JsonText.of(document.get()) : text.get());
        session.out().flush();
        return ExitCode.OK;
    }
}
