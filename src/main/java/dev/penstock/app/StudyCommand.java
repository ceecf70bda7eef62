package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.Session;
import dev.penstock.app.study.JournalOption;
import dev.penstock.app.study.SummaryCommand;
import dev.penstock.app.study.WorkOptions;
import dev.penstock.errors.InvalidInput;
import dev.penstock.study.StudyFile;
import dev.penstock.study.store.BatchFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Does again what a study file says. */
@Command(
        name = "study",
        subcommands = SummaryCommand.class,
        description = {
            "Does again what a study file says: puts concepts side by side, sweeps, sizes a vehicle, judges claims, goes on"
                    + " with a sample, optimises, finds what matters or what one objective costs of another. The local page"
                    + " saves such files; they can be written by hand.",
            "It answers with what compare, sweep, size, judge, sample, optimise, sensitivity or frontier would answer."
        })
final class StudyCommand extends BaseCommand {

    private static final Set<StudyFile.Kind> SEARCHES =
            EnumSet.of(StudyFile.Kind.OPTIMISE, StudyFile.Kind.FRONTIER, StudyFile.Kind.SENSITIVITY);

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "study file, or the name of one in cycles/studies/")
    private String file = "";

    @Option(names = "--report", paramLabel = "PATH", description = "also write a page, as compare, sweep and size do")
    private Optional<String> report = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "of a sample: folder of the rows; where the study lies in such a folder, that one otherwise")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private WorkOptions work;

    @Mixin
    private JournalOption journal;

    @Option(names = "--paper", paramLabel = "SIZE", description = "print the page as PDF too, on a4 or letter")
    private Optional<String> paper = Optional.empty();

    StudyCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        if (file.isEmpty()) {
            throw new InvalidInput("", "FILE", "missing", "write a study file, or summary and the folder of a sample");
        }
        Path path = find();
        StudyFile study = StudyFile.read(path);
        return CommandLineProgram.run(session, arguments(path, study).toArray(String[]::new));
    }

    private Path find() {
        Path path = Path.of(file);
        if (!Files.exists(path) && file.matches("[\\w-]+")) {
            path = session.home().resolve("cycles/studies").resolve(file + ".toml");
        }
        return path;
    }

    /** Where the rows of a sample go. */
    private Path place(Path study) {
        Path beside = study.toAbsolutePath().getParent();
        boolean begun = study.endsWith(BatchFolder.STUDY) && Files.exists(beside.resolve(BatchFolder.SCHEMA));
        return out.or(() -> begun ? Optional.of(beside) : Optional.empty())
                .orElseThrow(() -> new InvalidInput("", "--out", "missing", "write the folder that takes the rows"));
    }

    /** The command line that does the same; the cases are looked for beside the study. */
    private List<String> arguments(Path path, StudyFile study) {
        List<String> arguments = new ArrayList<>();
        arguments.add(
                switch (study.kind()) {
                    case COMPARE -> "compare";
                    case SWEEP -> "sweep";
                    case VEHICLE -> "size";
                    case CLAIMS -> "judge";
                    case SAMPLE, OPTIMISE, SENSITIVITY, FRONTIER -> study.kind().key();
                });
        Path folder = path.toAbsolutePath().getParent();
        study.cases().forEach(c -> arguments.add(folder.resolve(c).normalize().toString()));
        study.vary().forEach(axis -> arguments.addAll(List.of("--vary", axis)));
        study.changes().forEach((key, value) -> arguments.addAll(List.of("--set", key + "=" + value)));
        if (study.samples() > 0) {
            String option = study.kind() == StudyFile.Kind.VEHICLE ? "--uncertainty" : "--samples";
            arguments.addAll(List.of(option, Integer.toString(study.samples())));
        }
        if (study.fly()) {
            arguments.add("--fly");
        }
        study.further()
                .forEach((key, values) ->
                        values.forEach(value -> arguments.addAll(List.of("--" + key.replace('_', '-'), value))));
        if (study.kind() == StudyFile.Kind.SAMPLE) {
            arguments.addAll(
                    List.of("--name", study.name(), "--out", place(path).toString()));
            arguments.addAll(work.arguments());
        } else if (out.isPresent() || work.given()) {
            throw new InvalidInput("", "--out, --threads and --on", study.kind().key(), "only a sample takes them");
        }
        if (SEARCHES.contains(study.kind())) {
            arguments.addAll(journal.arguments());
        } else if (journal.given()) {
            throw new InvalidInput(
                    "", "--journal", study.kind().key(), "only optimise, frontier and sensitivity take it");
        }
        if (json()) {
            arguments.add("--json");
        }
        if (csv()) {
            arguments.add("--csv");
        }
        rows().ifPresent(part -> arguments.addAll(List.of("--rows", part)));
        report.ifPresent(place -> arguments.addAll(List.of("--report", place)));
        paper.ifPresent(size -> arguments.addAll(List.of("--paper", size)));
        return arguments;
    }
}
