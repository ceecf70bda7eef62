package dev.penstock.app.console;

import dev.penstock.app.options.OutputOption;
import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.text.AnswerOrigin;
import dev.penstock.reports.text.DocumentTable;
import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** What all commands share: help, the choice of output, and the trace for defects. */
public abstract class BaseCommand implements Callable<Integer> {

    protected final Session session;

    @Option(names = "--json", description = "print one JSON document, in SI units, and nothing else")
    private boolean json;

    @Option(
            names = "--csv",
            description = "print one comma-separated table with a heading line, in SI units, and nothing else")
    private boolean csv;

    @Option(
            names = "--rows",
            paramLabel = "PATH",
            description = "with --csv: the part of the JSON document whose entries are the lines, for example stations")
    private Optional<String> rows = Optional.empty();

    @Option(names = "--verbose", description = "print the trace when something fails")
    private boolean verbose;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this text")
    private boolean help;

    /** Like {@link OutputOption}s, of this class and of commands themselves. */
    private static final Set<String> OUTPUT = Set.of(
            "--json",
            "--csv",
            "--rows",
            "--verbose",
            "--out",
            "--output",
            "--paper",
            "--report",
            "--write-concept",
            "--set",
            "--help");

    @Spec
    private CommandSpec spec;

    protected BaseCommand(Session session) {
        this.session = session;
    }

    protected boolean verbose() {
        return verbose;
    }

    protected boolean json() {
        return json;
    }

    /** @return whether a table was asked for, and no document */
    protected boolean csv() {
        return csv;
    }

    /**
     * Refuses options of the output that mean nothing together; asked before the command begins.
     *
     * @throws InvalidInput naming the option
     */
    public void checkOutput() {
        if (json && csv) {
            throw new InvalidInput("", "--csv", "given with --json", "ask for one of them");
        }
        if (rows.isPresent() && !csv) {
            throw new InvalidInput("", "--rows", rows.get(), "it needs --csv");
        }
        checkPaper();
        if (rows.isPresent()) {
            furtherParts().ifPresent(further -> new AnswerParts(session.home(), command(), further).check(rows.get()));
        }
    }

    /** What is asked of paper needs a page that goes on paper. */
    private void checkPaper() {
        ParseResult given = spec.commandLine().getParseResult();
        String page = given.hasMatchedOption("--report")
                ? given.matchedOption("--report").originalStringValues().get(0)
                : "";
        if (given.hasMatchedOption("--paper") && page.isEmpty()) {
            throw new InvalidInput(
                    "",
                    "--paper",
                    given.matchedOption("--paper").originalStringValues().get(0),
                    "it needs --report");
        }
        boolean paper = given.hasMatchedOption("--paper")
                || page.toLowerCase(Locale.ROOT).endsWith(".pdf");
        if (given.hasMatchedOption("--with-trail") && !paper) {
            throw new InvalidInput(
                    "",
                    "--with-trail",
                    "given",
                    "it says what goes on paper: it needs --report FILE.pdf, or --report with --paper; explain prints the trail of"
                            + " a number");
        }
    }

    /** @return the part of the document that was named for the lines of a table, if any */
    protected Optional<String> rows() {
        return rows;
    }

    /**
     * For a command that works long: a wrong part is refused before it begins. Others look for it in their answer.
     *
     * @return parts of an answer that the published schema of the command does not tell
     */
    protected Optional<Set<String>> furtherParts() {
        return Optional.empty();
    }

    /** @return the part of the document whose entries are the lines of a table unless another is named */
    protected String mainRows() {
        return "";
    }

    /** @return the options given, but for changes of inputs and for where the answer goes */
    protected List<String> options() {
        List<String> options = new ArrayList<>();
        // An option that stands several times is matched as often, each time with all of its values.
        for (OptionSpec option :
                new LinkedHashSet<>(spec.commandLine().getParseResult().matchedOptions())) {
            if (!isOutput(option)) {
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

    /** @return whether an option is one of {@link OutputOption}s, or like them */
    protected static boolean isOutput(OptionSpec option) {
        return OUTPUT.contains(option.longestName())
                || option.userObject() instanceof Field field
                        && OutputOption.class.isAssignableFrom(field.getDeclaringClass());
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
        return answer(document, text, () -> table(document.get(), mainRows()));
    }

    /** Prints the answer in the form that was asked for, with a table of its own where no other is named. */
    protected int answer(Supplier<Map<String, Object>> document, Supplier<String> text, Supplier<String> table) {
        if (json) {
            session.documents().accept(origin().with(document.get()));
        } else if (csv) {
            session.out().print(rows.map(path -> table(document.get(), path)).orElseGet(table));
        } else {
            session.out().print(text.get());
        }
        session.out().flush();
        return ExitCode.OK;
    }

    /** @return where the document of this command comes from */
    protected AnswerOrigin origin() {
        List<String> arguments = spec.root().commandLine().getParseResult().originalArgs();
        return AnswerOrigin.of(command(), arguments);
    }

    private static String table(Map<String, Object> document, String path) {
        DocumentTable table = new DocumentTable(document);
        return table.csv(path)
                .orElseThrow(
                        () -> new InvalidInput("", "--rows", path, "allowed are " + String.join(", ", table.parts())));
    }
}
