package dev.penstock.app.web;

import dev.penstock.app.answer.ClaimsAnswer;
import dev.penstock.app.edit.TomlEdit;
import dev.penstock.claims.answer.Judge;
import dev.penstock.claims.answer.JudgeEffort;
import dev.penstock.claims.answer.Judgement;
import dev.penstock.claims.file.ClaimsFile;
import dev.penstock.claims.file.ClaimsReader;
import dev.penstock.claims.likelihood.Workshop;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.quantities.UnitSystem;
import dev.penstock.reports.claims.JudgementView;
import dev.penstock.reports.text.Software;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Parallel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/** Opens, changes and saves claims, judges them while the page watches, and measures in pictures, which stay in the browser. */
final class ClaimsRoutes implements AutoCloseable {

    private static final String JUDGEMENTS = "/api/judgement";

    private final Path home;
    private final Workspace workspace;
    private final ClaimsReader reader;
    private final FluidLibrary fluids;
    private final EngineRuns runs;
    private final FinishedReports finished;
    private final Software software;
    private final Jobs<Judgement> judgements;

    ClaimsRoutes(
            LocalServer.Settings settings,
            Workspace workspace,
            EngineRuns runs,
            FinishedReports finished,
            Duration longest) {
        this.home = settings.home();
        this.workspace = workspace;
        this.fluids = settings.fluids();
        this.reader = new ClaimsReader(fluids);
        this.runs = runs;
        this.finished = finished;
        this.software = settings.software();
        this.judgements = new Jobs<>("judgement", longest);
    }

    void addTo(RoutesConfig routes) {
        routes.post("/api/claims", this::shown);
        routes.post("/api/claims/save", this::save);
        routes.post("/api/picture", request -> LocalServer.json(request, PictureAnswer.of(RequestBody.of(request))));
        routes.post(JUDGEMENTS, this::judge);
        judgements.addTo(routes, JUDGEMENTS);
        routes.get(
                JUDGEMENTS + "/{id}/so-far",
                request -> LocalServer.json(request, answer(judgements.soFar(request.pathParam("id")))));
        routes.post(JUDGEMENTS + "/{id}/report", this::report);
    }

    private ClaimsFile claims(RequestBody body) {
        return reader.parse(name(body), workspace.text(body), body.changes("changes"));
    }

    private static String name(RequestBody body) {
        return body.text("file").isEmpty() ? "claims" : body.text("file");
    }

    private void shown(Context request) {
        RequestBody body = RequestBody.of(request);
        LocalServer.json(
                request, new ClaimsAnswer(fluids).of(claims(body), workspace.text(body), body.changes("changes")));
    }

    /** Begins to judge; a first, rough answer comes early. */
    private void judge(Context request) {
        RequestBody body = RequestBody.of(request);
        ClaimsFile claims = claims(body);
        JudgeEffort effort = new JudgeEffort(
                body.number("samples") == 0
                        ? JudgeEffort.USUAL.samples()
                        : (int) Math.min(body.number("samples"), 1_000_000),
                JudgeEffort.USUAL.seed());
        Workshop workshop = new Workshop(home, fluids, runs.study());
        String id = judgements.start(Jobs.HUNDREDTHS, job -> new Judge(
                        workshop,
                        claims,
                        effort,
                        Parallel.WORKERS,
                        job::stopped,
                        (done, of, what) -> job.at((int) (Jobs.HUNDREDTHS * (long) done / Math.max(1, of)), what),
                        job::early)
                .judge());
        LocalServer.json(request, Map.of("id", id));
    }

    private static Map<String, Object> answer(Judgement judgement) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", judgement.name());
        map.put("verdict", judgement.verdict().key());
        map.put("brief", JudgementView.brief(judgement));
        map.put("effort", JudgementView.effort(judgement));
        map.put("complete", judgement.complete());
        map.put("cautions", judgement.cautions());
        judgement.bestConcept().ifPresent(text -> map.put("concept", text));
        map.put(
                "sections",
                JudgementView.sections(judgement).stream()
                        .map(FoundStudy::section)
                        .toList());
        return map;
    }

    private void report(Context request) {
        Judgement judgement = judgements.soFar(request.pathParam("id"));
        String name = FinishedReports.fileName(judgement.name() + "-judged");
        String html = UnitSystem.METRIC.reading(() -> JudgementView.html(judgement, software));
        LocalServer.json(
                request,
                Map.of(
                        "id",
                        finished.put(
                                Asker.of(request),
                                name,
                                html,
                                RequestBody.of(request).text("form"))));
    }

    /** Writes the changes into the text; the claims that it then means must be those on the screen. */
    private void save(Context request) {
        RequestBody body = RequestBody.of(request);
        String text = TomlEdit.apply(workspace.text(body), body.changes("changes"), ClaimsReader::isText);
        if (!reader.parse(name(body), text, Map.of()).equals(claims(body))) {
            throw new Refusal(422, "the changes do not fit into this file's way of writing; change it in an editor");
        }
        if (!body.text("as").startsWith(Workspace.CLAIMS + "/")) {
            throw new Refusal(422, "claims are kept in the folder " + Workspace.CLAIMS);
        }
        LocalServer.json(
                request,
                workspace.save(body.text("as"), text, body.text("version")).map());
    }

    @Override
    public void close() {
        judgements.close();
    }
}
