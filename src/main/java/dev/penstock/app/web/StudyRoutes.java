package dev.penstock.app.web;

import dev.penstock.app.answer.Cell;
import dev.penstock.app.answer.EngineAnswer;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.FailureTally;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.study.SweepCharts;
import dev.penstock.reports.study.SweepView;
import dev.penstock.reports.text.AnswerOrigin;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.JsonText;
import dev.penstock.study.Axis;
import dev.penstock.study.Measure;
import dev.penstock.study.Sweep;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Several balances at once: concepts side by side, and sweeps. */
final class StudyRoutes {

    private static final int MOST_TOGETHER = 12;
    private static final AnswerOrigin MADE_HERE = new AnswerOrigin("sweep", "penstock serve");

    private static final FigureTable<EngineBalance> ENGINE = FigureTable.<EngineBalance>ofOne()
            .word("name", "concept", b -> b.concept().name())
            .word("cycle", "cycle", b -> b.concept().cycle().title())
            .word(
                    "propellants",
                    "propellants",
                    b -> b.concept().oxidizer().fluid().name() + " / "
                            + b.concept().fuel().fluid().name())
            .table();
    private static final FigureTable<LimitCheck> TIGHTEST = FigureTable.<LimitCheck>ofOne()
            .number("margin", "margin", Notation.MARGIN, LimitCheck::margin)
            .word("met", "met", LimitCheck::met)
            .word("limit", "limit", CheckFigures::title)
            .table();

    private final Workspace workspace;
    private final ConceptReader reader;
    private final RequestWorkers workers;
    private final SweepJobs sweeps;

    StudyRoutes(Workspace workspace, ConceptReader reader, RequestWorkers workers, SweepJobs sweeps) {
        this.workspace = workspace;
        this.reader = reader;
        this.workers = workers;
        this.sweeps = sweeps;
    }

    void addTo(RoutesConfig routes) {
        routes.post("/api/together", this::together);
        routes.get(
                "/api/measures",
                request -> LocalServer.json(
                        request,
                        Map.of(
                                "measures",
                                Measure.ALL.stream()
                                        .map(m -> Map.of("key", m.key(), "name", m.name()))
                                        .toList())));
        routes.post("/api/sweep", this::start);
        sweeps.addTo(routes, "/api/sweep");
        routes.get("/api/sweep/{id}/charts", this::charts);
        routes.get("/api/sweep/{id}/table.csv", request -> {
            download(request, "sweep.csv");
            request.contentType("text/csv;charset=utf-8").result(new SweepView(result(request)).csv());
        });
        routes.get("/api/sweep/{id}/table.json", request -> {
            download(request, "sweep.json");
            request.contentType("application/json;charset=utf-8")
                    .result(JsonText.of(MADE_HERE.with(new SweepView(result(request)).json())));
        });
    }

    private static void download(Context request, String name) {
        request.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
    }

    private void together(Context request) {
        RequestBody body = RequestBody.of(request);
        List<String> files = body.texts("files").stream().distinct().toList();
        Map<String, String> changes = body.changes("changes");
        String only = body.text("only");
        if (files.isEmpty() || files.size() > MOST_TOGETHER) {
            throw new Refusal(422, "choose 1 to " + MOST_TOGETHER + " concepts");
        }
        Asker asker = Asker.of(request);
        List<Map<String, Object>> concepts = new ArrayList<>();
        Map<String, EngineBalance> balanced = new LinkedHashMap<>();
        for (String file : files) {
            Workspace.Document document = workspace.read(file);
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("file", file);
            map.put("name", file);
            try {
                Concept concept =
                        reader.parse(file, document.text(), only.isEmpty() || only.equals(file) ? changes : Map.of());
                balanced.put(file, workers.ask(asker, study -> study.balance(concept)));
            } catch (PenstockException e) {
                map.put("failure", e.getMessage());
            }
            concepts.add(map);
        }
        List<EngineBalance> among = List.copyOf(balanced.values());
        for (Map<String, Object> map : concepts) {
            EngineBalance balance = balanced.get(map.get("file").toString());
            if (balance != null) {
                describe(map, balance, among);
            }
        }
        concepts.sort(
                Comparator.comparing(map -> map.get("margin") instanceof Double margin ? -margin : Double.MAX_VALUE));
        LocalServer.json(request, Map.of("concepts", concepts));
    }

    private static void describe(Map<String, Object> map, EngineBalance balance, List<EngineBalance> among) {
        map.putAll(FigureJson.of(ENGINE, balance));
        map.put("measures", EngineAnswer.measures(balance, among));
        Measure.tightest(balance).ifPresent(limit -> {
            map.putAll(FigureJson.of(TIGHTEST, limit));
            String text = CheckFigures.value(limit) + ", " + CheckFigures.boundary(limit);
            map.put("binding", new Cell(text, limit.path() + ".margin").map());
        });
    }

    /** The page writes ranges in fields of their own; a refusal speaks of them and not of an option. */
    private static Axis axis(String text) {
        try {
            return Axis.parse(text);
        } catch (InvalidInput e) {
            String input = text.contains("=") ? text.substring(0, text.indexOf('=')) : "the input";
            throw new Refusal(
                    422,
                    "From, To and Values of " + input
                            + " cannot be used: write numbers and one unit for both ends, and from 2 to "
                            + Axis.MOST_VALUES + " values (" + text.substring(text.indexOf('=') + 1) + ")");
        }
    }

    private void start(Context request) {
        RequestBody body = RequestBody.of(request);
        List<Axis> axes = body.texts("vary").stream().map(StudyRoutes::axis).toList();
        int samples = (int) Math.min(Math.max(-1, body.number("samples")), SweepJobs.MOST_POINTS);
        LocalServer.json(
                request,
                Map.of(
                        "id",
                        sweeps.start(
                                workspace.text(body),
                                body.changes("changes"),
                                axes,
                                samples,
                                measure(body.text("of")))));
    }

    /** @throws Refusal if there is no such figure */
    private static Measure measure(String key) {
        return key.isEmpty()
                ? SweepCharts.usual()
                : Measure.named(key).orElseThrow(() -> new Refusal(422, "there is no figure " + key));
    }

    private Sweep.Result result(Context request) {
        return sweeps.result(request.pathParam("id"));
    }

    /** Why combinations have no solution: one sentence of each kind, which differ in their numbers only, with how many it tells of. */
    private static List<String> reasons(Sweep.Result result) {
        FailureTally failures = new FailureTally();
        result.points().stream().flatMap(p -> p.failure().stream()).forEach(failures::count);
        return failures.reasons().stream()
                .map(r ->
                        r.count() + (r.count() == 1 ? " combination: " : " combinations, for example: ") + r.example())
                .toList();
    }

    private void charts(Context request) {
        Sweep.Result result = result(request);
        int without = (int)
                result.points().stream().filter(p -> p.balance().isEmpty()).count();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", result.name());
        map.put("complete", result.complete());
        map.put("points", result.points().size());
        map.put("without", without);
        map.put("reasons", reasons(result));
        Measure asked = measure(Optional.ofNullable(request.queryParam("of")).orElse(""));
        map.put("of", asked.key());
        SweepCharts charts = new SweepCharts(result, asked);
        map.put("flat", charts.flat());
        map.put("figures", charts.figures().stream().map(EngineAnswer::figure).toList());
        LocalServer.json(request, map);
    }
}
