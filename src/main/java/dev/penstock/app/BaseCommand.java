package dev.penstock.app;

import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.text.JsonText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

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

    /** Options that say where an answer goes; they do not belong to what made it. */
    protected static final Set<String> OUTPUT = Set.of(
            "--report", "--paper", "--json", "--csv", "--verbose", "--output", "--write-concept", "--set", "--help");

    @Spec
    private CommandSpec spec;

    BaseCommand(Session session) {
        this.session = session;
    }

    protected boolean verbose() {
        return verbose;
    }

    protected boolean json() {
        return json;
    }

    /** @return the options given, but for changes of inputs and for where the answer goes */
    protected List<String> options() {
        List<String> options = new ArrayList<>();
        for (OptionSpec option : spec.commandLine().getParseResult().matchedOptions()) {
            if (!OUTPUT.contains(option.longestName())) {
                if (option.arity().max() == 0) {
                    options.add(option.longestName());
                } else {
                    option.originalStringValues()
                            .forEach(value -> options.addAll(List.of(option.longestName(), value)));
                }
            }
        }
        return options;
    }

    /** @return name of the command */
    protected String command() {
        return spec.name();
    }

    /**
     * @param cases cases that the command was given
     * @return what a page of its answer has to hold
     */
    protected ReportRecord record(CaseFiles.Case... cases) {
        return CaseFiles.record(session, command(), options(), List.of(cases));
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
