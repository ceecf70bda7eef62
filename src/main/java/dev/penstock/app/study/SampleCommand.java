package dev.penstock.app.study;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.LocalAction;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.page.ReportRecord;
import dev.penstock.reports.study.SampleView;
import dev.penstock.reports.text.JsonText;
import dev.penstock.study.Progress;
import dev.penstock.study.StudyFile;
import dev.penstock.study.StudyInputs;
import dev.penstock.study.sample.LocalBatches;
import dev.penstock.study.sample.SamplePlan;
import dev.penstock.study.sample.SampleRequest;
import dev.penstock.study.sample.SampleRun;
import dev.penstock.study.sample.SampleStudy;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.store.BatchFolder;
import dev.penstock.study.store.StoredRows;
import dev.penstock.study.store.StudySummary;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Evaluates a case at many points and keeps a row of each. */
@Command(
        name = "sample",
        description = {
            "Evaluates a concept or vehicle at many points between ranges of its inputs, and keeps a row of each in a folder,"
                    + " batch by batch. Interrupting it keeps the finished batches; the same line goes on with the others.",
            "study summary DIR tells what the rows say together."
        })
public final class SampleCommand extends BaseCommand implements LocalAction {

    @Parameters(paramLabel = "CASE", description = "concept or vehicle file, or the name of one in cycles/")
    private String file;

    @Option(
            names = "--vary",
            paramLabel = "PATH=FROM..TO",
            description =
                    "input to vary, for example engine.chamber_pressure=4..20MPa, for a grid with a count behind it"
                            + " (:9), with words propellants.fuel=methane,rp-1, PATH=spread over its own spread, or"
                            + " spreads for every input that has one; may be given several times")
    private List<String> vary = new ArrayList<>();

    @Option(names = "--points", paramLabel = "N", defaultValue = "0", description = "number of points")
    private int points;

    @Option(
            names = "--design",
            paramLabel = "NAME",
            defaultValue = "sobol",
            description = "how the points lie: sobol (scrambled), latin-hypercube or grid")
    private String design;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "chooses one of all designs of that kind; ${DEFAULT-VALUE} otherwise")
    private int seed;

    @Option(
            names = "--batch",
            paramLabel = "N",
            description = "points of a batch; " + StudyInputs.USUAL_BATCH + " otherwise")
    private int batch = StudyInputs.USUAL_BATCH;

    @Option(
            names = "--figure",
            paramLabel = "PATH",
            split = ",",
            description = "further figure to keep, by its path in the trail, for example pumps.fuel-pump.speed_rad_s")
    private List<String> figures = new ArrayList<>();

    @Option(
            names = "--subject-to",
            paramLabel = "FIGURE<=VALUE",
            description = "constraint whose keeping is noted in each row, for example"
                    + " \"cooling.peak_wall_temperature_K<=900\"; may be given several times")
    private List<String> subjectTo = new ArrayList<>();

    @Option(names = "--out", paramLabel = "DIR", description = "folder of the rows: new, empty, or begun by this study")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--name", paramLabel = "TEXT", description = "name of the study; that of the case otherwise")
    private Optional<String> name = Optional.empty();

    @Mixin
    private WorkOptions work;

    @Mixin
    private ChangeOptions changes;

    /** @param session what the command works with */
    public SampleCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        Path folder =
                out.orElseThrow(() -> new InvalidInput("", "--out", "missing", "write the folder that takes the rows"));
        int threads = work.threads();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        StudyCase subject = StudyCase.open(session.runs(), found.file(), found.changes());
        SampleRequest request = new SampleRequest(
                name.orElse(subject.name()), vary, SampleStudy.design(design), points, seed, batch, figures, subjectTo);
        SamplePlan plan = SamplePlan.of(subject, request);
        Optional<SparkLaunch> cluster = work.cluster(session);
        Map<String, String> origin = origin(found, plan);
        try (ConsoleProgress progress = ConsoleProgress.of(session, "sampling", plan.points(), false)) {
            if (cluster.isEmpty()) {
                return show(folder, here(folder, origin, plan, threads, progress));
            }
            // The process on the cluster takes the folder; here it is begun, so that a refusal comes first.
            BatchFolder.open(folder, origin).close();
            return show(folder, cluster.get().run(folder, session.home(), progress));
        }
    }

    private SampleRun here(Path folder, Map<String, String> origin, SamplePlan plan, int threads, Progress progress) {
        try (BatchFolder rows = BatchFolder.open(folder, origin);
                Interruption interruption = new Interruption()) {
            return SampleRun.of(plan, rows, new LocalBatches(threads), progress, interruption::requested);
        }
    }

    private int show(Path folder, SampleRun run) {
        if (run.skipped() + run.worked() == 0) {
            return answer(() -> SampleView.document(folder, run), () -> SampleView.text(folder, run));
        }
        try (StoredRows rows = StoredRows.open(folder)) {
            if (csv() && rows().isEmpty()) {
                SampleView.csv(rows, session.out());
                session.out().flush();
                return ExitCode.OK;
            }
            StudySummary summary = rows.summary(List.of());
            Map<String, Object> document = SampleView.document(folder, run);
            document.putAll(SampleView.document(summary));
            answer(() -> document, () -> SampleView.text(folder, run) + SampleView.text(summary));
            return summary.answered() > 0 ? ExitCode.OK : ExitCode.NO_SOLUTION;
        }
    }

    /** All that says what the rows are, as files beside them; the study among them can be run by itself. */
    private Map<String, String> origin(CaseFiles.Case found, SamplePlan plan) {
        ReportRecord record = record(found);
        StudyFile study = SampleStudy.file(plan.request(), record.cases(), found.changes());
        Map<String, String> files = new LinkedHashMap<>(record.files());
        files.put(BatchFolder.SCHEMA, JsonText.of(SampleView.schema(plan, record.software())));
        files.put(BatchFolder.STUDY, study.text());
        return files;
    }
}
