package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.LocalAction;
import dev.penstock.app.console.PageFiles;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ReportOption;
import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.page.PageComparison;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.text.Release;
import dev.penstock.reports.text.Software;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Parameters;

/** Makes a page again from the files that it holds. */
@Command(
        name = "reproduce",
        description =
                "Makes a page again from the files that it holds, tells which versions differ from those it was made"
                        + " with, and compares every number. The exit code is 1 if one of them moved.")
final class ReproduceCommand extends BaseCommand implements LocalAction {

    /** Commands that write pages; a page from somebody else must not start anything but these. */
    private static final Set<String> COMMANDS = Set.of(
            "balance",
            "limit",
            "off-design",
            "cool",
            "compare",
            "sweep",
            "size",
            "trade",
            "judge",
            "optimise",
            "sensitivity",
            "frontier");

    private static final int SHOWN = 20;
    private static final int MOST_WORDS = 200;
    private static final int LONGEST_WORD = 2000;

    @Parameters(paramLabel = "REPORT", description = "page that was written with --report, or its PDF")
    private Path file;

    @Mixin
    private ReportOption report;

    ReproduceCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        if (!Files.isRegularFile(file) || !PageFiles.is(file)) {
            throw new InvalidInput(
                    "", "REPORT", file.toString(), "it must be a page that was written with --report, or its PDF");
        }
        String old = PageFiles.page(file);
        ReportRecord record = PageFiles.record(file, old);
        if (!COMMANDS.contains(record.command())) {
            throw new InvalidInput("", "REPORT", file.toString(), "its command " + record.command() + " makes no page");
        }
        requirePlainOptions(record);
        Software here = Software.of(session.home(), Release.version());
        Optional<String> warning = PageFiles.warning(file, record, here);
        warning.ifPresent(sentence -> session.err().println("penstock: " + sentence));
        String made = again(record);
        PageComparison comparison = PageComparison.of(old, made);
        List<Path> pages = report.write(() -> Map.of(name(), made));
        answer(
                () -> json(record, comparison, record.differences(here)),
                () -> text(record, comparison) + written(pages));
        return comparison.same() ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }

    /** The options of a page are those that its command noted: names in full, none that says where an answer goes. */
    private void requirePlainOptions(ReportRecord record) {
        CommandSpec command = CommandLineProgram.commandLine(session)
                .getSubcommands()
                .get(record.command())
                .getCommandSpec();
        List<String> words = record.options();
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            OptionSpec option = word.startsWith("--") ? command.findOption(word) : null;
            boolean value = option != null && option.arity().max() > 0;
            if (words.size() > MOST_WORDS
                    || option == null
                    || isOutput(option)
                    || value && (++i == words.size() || words.get(i).length() > LONGEST_WORD)) {
                throw new InvalidInput(
                        "",
                        "REPORT",
                        word,
                        "options of a page must be such that penstock " + record.command() + " notes");
            }
        }
    }

    private String name() {
        String name = file.getFileName().toString();
        return name.substring(0, name.lastIndexOf('.')) + ".html";
    }

    /** Runs the command of the record on its files; a command may answer and yet have no solution for some of them. */
    private String again(ReportRecord record) {
        Path folder = PageFiles.unpack(session, file, record);
        Path page = folder.resolve("page-made-again.html");
        List<String> line = new ArrayList<>(List.of(record.command()));
        record.cases().forEach(name -> line.add(folder.resolve(name).toString()));
        line.addAll(record.arguments()
                .subList(record.cases().size(), record.arguments().size()));
        line.addAll(List.of("--report", page.toString()));
        StringWriter problems = new StringWriter();
        Session quiet = session.into(new PrintWriter(new StringWriter()), new PrintWriter(problems));
        CommandLineProgram.run(quiet, line.toArray(String[]::new));
        page.toFile().deleteOnExit();
        try {
            return Files.readString(page);
        } catch (IOException e) {
            throw new InvalidInput("", "REPORT", file.toString(), "its files give no page now: " + problems);
        }
    }

    private static Map<String, Object> json(ReportRecord record, PageComparison comparison, List<String> versions) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("page_made_by", record.line());
        map.put("version_differences", versions);
        map.put("numbers", comparison.numbers());
        map.put("same", comparison.same());
        map.put("moved", comparison.moved());
        return map;
    }

    private static String text(ReportRecord record, PageComparison comparison) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(record.line()).append(line);
        if (comparison.same()) {
            return text.append(comparison.numbers())
                    .append(" numbers, all the same")
                    .append(line)
                    .toString();
        }
        List<String> moved = comparison.moved();
        text.append(moved.size()).append(" places differ").append(line);
        moved.stream()
                .limit(SHOWN)
                .forEach(place -> text.append("  ").append(place).append(line));
        if (moved.size() > SHOWN) {
            text.append("  and ").append(moved.size() - SHOWN).append(" more").append(line);
        }
        return text.toString();
    }
}
