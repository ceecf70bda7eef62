package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.ReportOption;
import dev.penstock.claims.answer.Judge;
import dev.penstock.claims.answer.JudgeEffort;
import dev.penstock.claims.answer.Judgement;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.claims.likelihood.Workshop;
import dev.penstock.errors.InvalidInput;
import dev.penstock.files.OutputFile;
import dev.penstock.input.InputFile;
import dev.penstock.reports.claims.JudgementView;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.text.Software;
import dev.penstock.study.Parallel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges claims about an engine or a vehicle. */
@Command(
        name = "judge",
        description = {
            "Judges claims about an engine or a vehicle: what must it have been like, how sure is that, which cycle was it,"
                    + " and which claim does not fit?",
            "Interrupting it keeps what is done."
        })
final class JudgeCommand extends BaseCommand {

    private static final String WRITE_CONCEPT = "--write-concept";

    @Parameters(paramLabel = "CLAIMS", description = "claims file, or the name of one in cycles/claims/")
    private String file;

    @Option(
            names = "--samples",
            paramLabel = "N",
            description = "engines carried for each kind of engine; more make the answer surer and slower")
    private Optional<Integer> samples = Optional.empty();

    @Option(names = "--seed", paramLabel = "S", description = "what the random numbers start from; 1 otherwise")
    private Optional<Integer> seed = Optional.empty();

    @Option(
            names = WRITE_CONCEPT,
            paramLabel = "FILE",
            description = "also write the best-fitting engine as a concept file")
    private Optional<Path> concept = Optional.empty();

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private ReportOption report;

    JudgeCommand(Session session) {
        super(session);
    }

    @Override
    protected Optional<Set<String>> furtherParts() {
        return Optional.of(Set.of(JudgementView.PROPELLANTS));
    }

    @Override
    public Integer call() {
        JudgeEffort effort = new JudgeEffort(
                samples.orElse(JudgeEffort.USUAL.samples()),
                seed.map(Long::valueOf).orElse(JudgeEffort.USUAL.seed()));
        Path path = find(session, file);
        ClaimsFile claims = new ClaimsReader(session.fluids()).read(path, changes.map());
        // Whoever interrupts the program waits until the answer of what was done is written.
        try (Interruption interruption = new Interruption()) {
            return told(path, judged(session, claims, effort, interruption::requested));
        }
    }

    private int told(Path path, Judgement judgement) {
        List<Path> written = new ArrayList<>(report.write(() -> Map.of(
                slug(judgement) + ".html", record(path).addTo(JudgementView.html(judgement, software(session))))));
        concept.ifPresent(to ->
                judgement.bestConcept().ifPresent(text -> written.add(new OutputFile(WRITE_CONCEPT, to).write(text))));
        answer(() -> JudgementView.json(judgement), () -> JudgementView.text(judgement) + written(written));
        return judgement.verdict() == Judgement.Verdict.IMPOSSIBLE ? ExitCode.NO_SOLUTION : ExitCode.OK;
    }

    static String slug(Judgement judgement) {
        return ConceptReports.slug(judgement.name()) + "-judged";
    }

    static Software software(Session session) {
        return new ConceptReports(session).software();
    }

    /** Judges, with progress for whoever watches; an interrupt keeps what is done. */
    static Judgement judged(Session session, ClaimsFile claims, JudgeEffort effort, BooleanSupplier stopped) {
        Workshop workshop =
                new Workshop(session.home(), session.fluids(), session.runs().study());
        try (ConsoleProgress progress = ConsoleProgress.of(session, "judging", 2, false)) {
            return new Judge(workshop, claims, effort, Parallel.WORKERS, stopped, progress::done, rough -> {
                        if (session.terminal()) {
                            session.err().println();
                            session.err().println("so far: " + JudgementView.brief(rough));
                            session.err().flush();
                        }
                    })
                    .judge();
        }
    }

    private ReportRecord record(Path path) {
        return record(session, command(), options(), path, changes.map());
    }

    static ReportRecord record(
            Session session, String command, List<String> options, Path path, Map<String, String> changes) {
        String name = path.getFileName().toString();
        return new ReportRecord(
                command,
                options,
                changes,
                List.of(name),
                Map.of(name, InputFile.read(path).text()),
                software(session));
    }

    /** A file, or the name of one that comes with Penstock. */
    static Path find(Session session, String name) {
        Path path = Path.of(name);
        if (!Files.exists(path) && name.matches("[\\w-]+")) {
            path = session.home().resolve("cycles/claims").resolve(name + ".toml");
        }
        if (!Files.isRegularFile(path)) {
            throw new InvalidInput(
                    "", "CLAIMS", name, "write the path of a claims file, or the name of one in cycles/claims/");
        }
        return path;
    }
}
