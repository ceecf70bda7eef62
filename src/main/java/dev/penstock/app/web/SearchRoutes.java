package dev.penstock.app.web;

import dev.penstock.errors.InvalidInput;
import dev.penstock.input.InputValue;
import dev.penstock.numerics.variance.SobolIndices;
import dev.penstock.reports.study.FrontierView;
import dev.penstock.reports.study.OptimumView;
import dev.penstock.reports.study.SensitivityView;
import dev.penstock.reports.text.AnswerOrigin;
import dev.penstock.reports.text.JsonText;
import dev.penstock.reports.text.Software;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.StudyFile;
import dev.penstock.study.StudyInputs;
import dev.penstock.study.search.FrontierResult;
import dev.penstock.study.search.FrontierRuns;
import dev.penstock.study.search.OptimumResult;
import dev.penstock.study.search.OptimumRuns;
import dev.penstock.study.search.Question;
import dev.penstock.study.search.QuestionText;
import dev.penstock.study.search.SensitivityResult;
import dev.penstock.study.search.SensitivityRuns;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudyPoint;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** Searches and samples that a page has asked for: begun, watched, stopped, shown. */
final class SearchRoutes implements AutoCloseable {

    private static final String SEARCHES = "/api/search";

    private final Workspace workspace;
    private final EngineRuns runs;
    private final FinishedReports finished;
    private final Software software;
    private final StudyFileRoutes files;
    private final Jobs<FoundStudy> jobs;
    private final SampledRows samples;

    SearchRoutes(Workspace workspace, EngineRuns runs, FinishedReports finished, Software software, Duration longest) {
        this.workspace = workspace;
        this.runs = runs;
        this.finished = finished;
        this.software = software;
        this.files = new StudyFileRoutes(workspace);
        this.jobs = new Jobs<>("study", longest);
        this.samples = new SampledRows(software);
    }

    void addTo(RoutesConfig routes) {
        routes.post("/api/search-choices", this::choices);
        routes.post(SEARCHES, this::start);
        jobs.addTo(routes, SEARCHES);
        routes.get(
                SEARCHES + "/{id}/result",
                request -> LocalServer.json(request, found(request).answer()));
        routes.get(SEARCHES + "/{id}/answer.json", this::document);
        routes.get(SEARCHES + "/{id}/rows.csv", samples::csv);
        routes.post(SEARCHES + "/{id}/report", this::report);
    }

    private FoundStudy found(Context request) {
        return jobs.result(request.pathParam("id"));
    }

    private StudyCase subject(RequestBody body) {
        String file = body.texts("cases").stream().findFirst().orElse("");
        workspace.read(file);
        return StudyCase.open(runs, workspace.place(file), body.changes("changes"));
    }

    /** What can be varied of a case, and what can be asked of it. */
    private void choices(Context request) {
        StudyCase subject = subject(RequestBody.of(request));
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", subject.name());
        map.put(
                "inputs",
                subject.inputs().entrySet().stream()
                        .map(e -> Map.of(
                                "path", e.getKey(), "title", title(e.getValue()), "written", written(e.getValue())))
                        .toList());
        map.put(
                "figures",
                subject.paths().usual().stream()
                        .map(f -> Map.of("path", f.path(), "title", f.title()))
                        .toList());
        map.put(
                "usual",
                Map.of(
                        "starts", StudyInputs.USUAL_STARTS,
                        "population", StudyInputs.USUAL_POPULATION,
                        "generations", StudyInputs.USUAL_GENERATIONS,
                        "samples", StudyInputs.USUAL_SAMPLES));
        LocalServer.json(request, map);
    }

    private static String title(InputValue said) {
        return said.input().title();
    }

    private static String written(InputValue said) {
        return said.computed() ? "" : said.readable();
    }

    private void start(Context request) {
        RequestBody body = RequestBody.of(request);
        StudyFile asked = files.of(body, body.text("name").isEmpty() ? "study" : body.text("name"));
        String file = body.texts("cases").stream().findFirst().orElse("");
        String id;
        try {
            StudyFile study = StudyFile.parse("study", asked.text());
            StudyCase subject = subject(body);
            id = switch (study.kind()) {
                case OPTIMISE -> optimise(file, study, text(study).optimise(subject));
                case FRONTIER -> frontier(file, study, text(study).frontier(subject));
                case SENSITIVITY -> sensitivity(study, text(study).sensitivity(subject));
                case SAMPLE -> samples.start(jobs, study, subject);
                case COMPARE, SWEEP, VEHICLE, CLAIMS ->
                    throw new Refusal(422, "a study of the kind " + study.kind().key() + " has a page of its own");
            };
        } catch (InvalidInput e) {
            throw plain(e);
        }
        LocalServer.json(request, Map.of("id", id));
    }

    /** A page has fields where the command line has options. */
    private static InvalidInput plain(InvalidInput e) {
        return new InvalidInput(e.problems().stream()
                .map(p -> new InvalidInput.Problem(
                        "", p.key().replace("--", ""), p.value(), p.allowed().replace("--", "")))
                .toList());
    }

    private static QuestionText text(StudyFile study) {
        return new QuestionText(
                study.vary(),
                said(study, "minimise"),
                said(study, "maximise"),
                said(study, "subject_to"),
                said(study, "figures"));
    }

    private static List<String> said(StudyFile study, String key) {
        return study.further().getOrDefault(key, List.of());
    }

    private static int number(StudyFile study, String key, int usual) {
        return said(study, key).isEmpty()
                ? usual
                : Integer.parseInt(said(study, key).get(0));
    }

    private static int seed(StudyFile study) {
        return number(study, "seed", 1);
    }

    private String begin(BiFunction<Jobs.Job<FoundStudy>, Progress, FoundStudy> work) {
        return jobs.start(Jobs.HUNDREDTHS, job -> work.apply(job, shown(job)));
    }

    /** How far a job is, in hundredths, and in words. */
    static Progress shown(Jobs.Job<FoundStudy> job) {
        return (done, of, what) -> job.at(
                (int) (Jobs.HUNDREDTHS * (long) done / Math.max(1, of)),
                done + " of " + of + " points" + (what.isEmpty() ? "" : ", " + what));
    }

    private String optimise(String file, StudyFile study, Question question) {
        int starts = number(study, "starts", StudyInputs.USUAL_STARTS);
        int most = number(study, "evaluations", OptimumRuns.usualEvaluations(question.space()));
        OptimumRuns search = new OptimumRuns();
        search.check(question);
        return begin((job, progress) -> {
            OptimumResult result = search.run(question, starts, most, seed(study), progress, job::stopped);
            OptimumView view = new OptimumView(result);
            return new FoundStudy(
                    view.title(),
                    result.complete(),
                    view.sections(),
                    view.json(),
                    view::html,
                    result.best().closes() ? List.of(opened(file, question, result.best())) : List.of());
        });
    }

    private String frontier(String file, StudyFile study, Question question) {
        int population = number(study, "population", StudyInputs.USUAL_POPULATION);
        int generations = number(study, "generations", StudyInputs.USUAL_GENERATIONS);
        return begin((job, progress) -> {
            FrontierResult result =
                    new FrontierRuns().run(question, population, generations, seed(study), progress, job::stopped);
            FrontierView view = new FrontierView(result);
            return new FoundStudy(
                    view.title(),
                    result.complete(),
                    view.sections(),
                    view.json(),
                    view::html,
                    result.points().stream().map(p -> opened(file, question, p)).toList());
        });
    }

    private static String opened(String file, Question question, StudyPoint point) {
        Map<String, String> all = new LinkedHashMap<>(question.subject().changes());
        all.putAll(question.space().changes(point.values()));
        return FoundStudy.address(file, question.subject().ofVehicle(), all);
    }

    private String sensitivity(StudyFile study, Question question) {
        int count = study.samples() > 0 ? study.samples() : StudyInputs.USUAL_SAMPLES;
        if (count < 2 * SobolIndices.SHIFTS) {
            throw new Refusal(422, "samples is " + count + "; write " + 2 * SobolIndices.SHIFTS + " or more");
        }
        return begin((job, progress) -> {
            SensitivityResult result = new SensitivityRuns().run(question, count, seed(study), progress, job::stopped);
            SensitivityView view = new SensitivityView(result);
            return new FoundStudy(view.title(), result.complete(), view.sections(), view.json(), view::html, List.of());
        });
    }

    private void document(Context request) {
        FoundStudy found = found(request);
        request.header("Content-Disposition", "attachment; filename=\"" + name(found) + ".json\"")
                .contentType(LocalServer.JSON)
                .result(JsonText.of(new AnswerOrigin("study", "penstock serve").with(found.document())));
    }

    private static String name(FoundStudy found) {
        return FinishedReports.fileName(found.title());
    }

    private void report(Context request) {
        FoundStudy found = found(request);
        String form = RequestBody.of(request).text("form");
        String id = finished.put(Asker.of(request), name(found), found.html().apply(software), form);
        LocalServer.json(request, Map.of("id", id));
    }

    @Override
    public void close() {
        jobs.close();
        samples.close();
    }
}
