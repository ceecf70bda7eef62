package dev.penstock.app.web;

import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.study.OptimumView;
import dev.penstock.reports.study.SampleCharts;
import dev.penstock.reports.study.SampleView;
import dev.penstock.reports.text.JsonText;
import dev.penstock.reports.text.Software;
import dev.penstock.study.StudyFile;
import dev.penstock.study.sample.LocalBatches;
import dev.penstock.study.sample.SamplePlan;
import dev.penstock.study.sample.SampleRequest;
import dev.penstock.study.sample.SampleRun;
import dev.penstock.study.sample.SampleStudy;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.store.BatchFolder;
import dev.penstock.study.store.StoredRows;
import dev.penstock.study.store.StudySummary;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** Samples that a page has asked for. Their rows are in a folder of this run; the command line keeps those of large ones. */
final class SampledRows implements AutoCloseable {

    /** More points than somebody waits for in front of a page; the command line goes further. */
    static final int MOST_POINTS = 20_000;

    /** A stopped sample keeps its finished batches, so they are small. */
    private static final int BATCHES = 100;

    private final Software software;
    private final Map<String, Path> folders = new ConcurrentHashMap<>();

    SampledRows(Software software) {
        this.software = software;
    }

    String start(Jobs<FoundStudy> jobs, StudyFile study, StudyCase subject) {
        SampleRequest said = SampleStudy.request(study);
        SamplePlan whole = SamplePlan.of(subject, said);
        if (whole.points() > MOST_POINTS) {
            throw new Refusal(
                    422,
                    "points is " + whole.points() + "; the page takes " + MOST_POINTS
                            + " at most: save the study, and penstock study takes ten million");
        }
        SamplePlan plan = SamplePlan.of(subject, said.inBatchesOf(Math.max(1, whole.points() / BATCHES)));
        Path folder = made();
        String id = jobs.start(Jobs.HUNDREDTHS, job -> found(job, study, plan, subject, folder));
        folders.put(id, folder);
        return id;
    }

    private static Path made() {
        try {
            return Files.createTempDirectory("penstock-rows");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private FoundStudy found(
            Jobs.Job<FoundStudy> job, StudyFile study, SamplePlan plan, StudyCase subject, Path folder) {
        Map<String, String> origin = new LinkedHashMap<>();
        origin.put(BatchFolder.SCHEMA, JsonText.of(SampleView.schema(plan, software)));
        origin.put(BatchFolder.STUDY, study.text());
        SampleRun run;
        try (BatchFolder rows = BatchFolder.open(folder, origin)) {
            int threads = Runtime.getRuntime().availableProcessors();
            run = SampleRun.of(plan, rows, new LocalBatches(threads), SearchRoutes.shown(job), job::stopped);
        }
        if (run.worked() == 0) {
            throw new CancellationException("stopped before anything was found");
        }
        try (StoredRows rows = StoredRows.open(folder)) {
            StudySummary summary = rows.summary(List.of());
            String title = subject.name() + ": a sample over " + study.vary().size()
                    + (study.vary().size() == 1 ? " input" : " inputs");
            Function<Software, String> html =
                    with -> OptimumView.page(subject, title, "Sample", SampleCharts.sections(summary), with);
            return new FoundStudy(
                    title,
                    run.complete(),
                    SampleCharts.sections(summary),
                    SampleView.document(summary),
                    html,
                    List.of());
        }
    }

    /** Answers with the rows, a line for each. */
    void csv(Context request) {
        Path folder = folders.get(request.pathParam("id"));
        if (folder == null) {
            throw new Refusal(404, "there are no such rows any more");
        }
        StringWriter text = new StringWriter();
        try (StoredRows rows = StoredRows.open(folder);
                PrintWriter out = new PrintWriter(text)) {
            SampleView.csv(rows, out);
        } catch (InvalidInput e) {
            throw new Refusal(409, "no rows are finished yet");
        }
        request.header("Content-Disposition", "attachment; filename=\"rows.csv\"")
                .contentType("text/csv;charset=utf-8")
                .result(text.toString());
    }

    @Override
    public void close() {
        folders.values().forEach(SampledRows::remove);
    }

    private static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // What a sample that is still being stopped writes there stays in the system's folder for such files.
        }
    }
}
