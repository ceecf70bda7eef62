package dev.penstock.app.web;

import dev.penstock.app.answer.EngineAnswer;
import dev.penstock.app.edit.TomlEdit;
import dev.penstock.claims.answer.OpeningClaims;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.reading.CycleSwitch;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.concept.ConceptPage;
import dev.penstock.reports.concept.FeedAnswer;
import dev.penstock.reports.page.TrailView;
import dev.penstock.reports.slide.EngineSlides;
import dev.penstock.reports.slide.SlideFiles;
import dev.penstock.reports.text.JsonText;
import dev.penstock.reports.text.Software;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.reading.VehicleReader;
import dev.penstock.vehicle.stage.VehicleSizing;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

/** Opens, reads, balances, reports and saves one concept. The text under change lives in the browser until it is saved. */
final class EngineRoutes {

    private static final int KEPT = 24;

    private final Workspace workspace;
    private final ConceptReader reader;
    private final VehicleReader vehicles;
    private final RequestWorkers workers;
    private final WarmUp warmUp;
    private final FinishedReports finished;
    private final Software software;
    /** Materials of walls, by id. */
    private final List<String> walls;
    /** Balances of late: the charts of a concept follow its figures, and undo goes back to them. */
    private final Recent<Question, KnownEngine> lately = new Recent<>(KEPT);

    private final AtomicLong balances = new AtomicLong();

    /** A part of an answer, from the engine, from what it was before, and from what was asked. */
    private interface Part {

        Map<String, Object> of(KnownEngine engine, Optional<KnownEngine> before, RequestBody body);
    }

    private record Question(String name, String text, Map<String, String> changes) {

        static Question of(RequestBody body) {
            String name = body.text("file").isEmpty() ? "concept" : body.text("file");
            return new Question(name, body.text("text"), body.changes("changes"));
        }

        Question unchanged() {
            return new Question(name, text, Map.of());
        }
    }

    EngineRoutes(
            Workspace workspace,
            ConceptReader reader,
            RequestWorkers workers,
            WarmUp warmUp,
            FinishedReports finished,
            Software software,
            Path home) {
        this.walls = WallLibrary.open(home).ids();
        this.workspace = workspace;
        this.reader = reader;
        this.vehicles = new VehicleReader(reader.fluids());
        this.workers = workers;
        this.warmUp = warmUp;
        this.finished = finished;
        this.software = software;
    }

    void addTo(RoutesConfig routes) {
        routes.get(
                "/api/files",
                request -> LocalServer.json(
                        request,
                        Map.of(
                                "concepts", workspace.concepts(),
                                "vehicles", workspace.vehicles(),
                                "claims", workspace.claims())));
        routes.get("/api/file", this::open);
        routes.post("/api/inputs", this::inputs);
        routes.post("/api/cycle", this::cycle);
        routes.post("/api/balance", this::balance);
        routes.post(
                "/api/flow",
                request -> answer(request, false, (engine, before, body) -> EngineAnswer.flow(engine.balance())));
        routes.post(
                "/api/charts",
                request -> answer(request, true, (engine, before, body) -> engine.charts(before, wanted(body))));
        routes.post(
                "/api/cooling",
                request -> answer(
                        request,
                        true,
                        (engine, before, body) ->
                                EngineAnswer.cooling(engine.balance(), before.map(KnownEngine::balance))));
        routes.post("/api/why", this::why);
        routes.post("/api/report", this::report);
        routes.post("/api/figures", this::figures);
        routes.post("/api/text", this::text);
        routes.post("/api/claims/begin", this::claims);
        routes.post("/api/save", this::save);
    }

    private void open(Context request) {
        String name = Optional.ofNullable(request.queryParam("name")).orElse("");
        LocalServer.json(request, workspace.read(name).map());
    }

    private Concept concept(Question question) {
        if (question.text().length() > Workspace.LARGEST) {
            throw new Refusal(413, "a concept may hold " + Workspace.LARGEST / 1024 + " KiB");
        }
        return reader.parse(question.name(), question.text(), question.changes());
    }

    private void inputs(Context request) {
        Question question = Question.of(RequestBody.of(request));
        Concept concept = concept(question);
        LocalServer.json(request, Map.of("name", concept.name(), "inputs", inputs(question, concept)));
    }

    private List<Map<String, Object>> inputs(Question question, Concept concept) {
        return EngineAnswer.inputs(
                concept.document().inputs(), question.text(), question.changes(), InputValue::readable, this::files);
    }

    /** Files that an input may name, for those that name one. */
    private List<String> files(String key) {
        return switch (key) {
            case "propellants.oxidizer" -> reader.fluids().having(Propellant.Role.OXIDIZER);
            case "propellants.fuel" -> reader.fluids().having(Propellant.Role.FUEL);
            default -> key.endsWith("material") ? walls : List.of();
        };
    }

    /** Another cycle: what changes with it, and what is lost, a sentence each. */
    private void cycle(Context request) {
        RequestBody body = RequestBody.of(request);
        Cycle cycle = Cycle.all().stream()
                .filter(c -> c.id().equals(body.text("cycle")))
                .findFirst()
                .orElseThrow(() -> new Refusal(422, "there is no cycle " + body.text("cycle")));
        CycleSwitch.Switched switched = CycleSwitch.of(reader, concept(Question.of(body)), cycle);
        LocalServer.json(
                request, Map.of("title", cycle.title(), "changes", switched.changes(), "said", switched.said()));
    }

    private void balance(Context request) {
        RequestBody body = RequestBody.of(request);
        Question question = Question.of(body);
        Concept concept = concept(question);
        Asker asker = Asker.of(request, body);
        KnownEngine engine = workers.ask(asker, study -> engine(question, concept, study));
        Map<String, Object> map = new LinkedHashMap<>();
        Runnable figures = () -> {
            map.putAll(EngineAnswer.of(engine.balance()));
            map.put("inputs", inputs(question, concept));
        };
        Optional<Supplier<Map<String, Object>>> drawings = drawings(question, engine, body);
        if (drawings.isPresent()) {
            // Both at once: what is in view comes with the figures.
            Map<String, Object> drawn = workers.draw(asker, drawings.get(), figures);
            map.putAll(drawn);
        } else {
            figures.run();
        }
        LocalServer.json(request, map);
        warmUp.answered(study -> again(question, concept, study));
    }

    /** All that an edit may take: balance, figures, tables, inputs, drawings. */
    private void again(Question question, Concept concept, EngineStudy study) {
        KnownEngine engine = new KnownEngine(study.balance(concept));
        Map<String, Object> map = new LinkedHashMap<>(EngineAnswer.of(engine.balance()));
        map.put("inputs", inputs(question, concept(question)));
        map.putAll(EngineAnswer.flow(engine.balance()));
        map.put("charts", engine.charts(Optional.empty(), List.of()));
        JsonText.compact(map);
    }

    /** Which charts are in view, by their places. */
    private static List<Integer> wanted(RequestBody body) {
        return body.decimals("charts").stream().map(Double::intValue).toList();
    }

    /** Draws what is in view, as far as nothing must be balanced for it; none where nothing is. */
    private Optional<Supplier<Map<String, Object>>> drawings(Question question, KnownEngine engine, RequestBody body) {
        List<Integer> charts = wanted(body);
        Optional<KnownEngine> before =
                question.changes().isEmpty() ? Optional.empty() : lately.get(question.unchanged());
        boolean comparable = question.changes().isEmpty() || before.isPresent();
        boolean withCharts = comparable && !charts.isEmpty();
        if (!body.flag("flow") && !withCharts) {
            return Optional.empty();
        }
        return Optional.of(() -> {
            Map<String, Object> drawn = new LinkedHashMap<>();
            if (body.flag("flow")) {
                drawn.putAll(EngineAnswer.flow(engine.balance()));
            }
            if (withCharts) {
                drawn.put("charts", engine.charts(before, charts));
            }
            return drawn;
        });
    }

    /** Draws what has just been balanced; the balance itself is made only if it is not known any more. */
    private void answer(Context request, boolean overlaid, Part part) {
        RequestBody body = RequestBody.of(request);
        Question question = Question.of(body);
        Asker asker = Asker.of(request, body);
        KnownEngine engine = engine(question, asker);
        Optional<KnownEngine> before = overlaid ? unchanged(question, asker) : Optional.empty();
        LocalServer.json(request, workers.draw(asker, () -> part.of(engine, before, body)));
    }

    /** The engine as its file has it, to be drawn behind the changed one; none where it does not close. */
    private Optional<KnownEngine> unchanged(Question question, Asker asker) {
        if (question.changes().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(engine(question.unchanged(), asker));
        } catch (PenstockException e) {
            return Optional.empty();
        }
    }

    /** @return the engine of a question; the text is read and balanced only if it is not known any more */
    private KnownEngine engine(Question question, Asker asker) {
        return lately.get(question).orElseGet(() -> {
            Concept concept = concept(question);
            return workers.ask(asker, study -> engine(question, concept, study));
        });
    }

    private KnownEngine engine(Question question, Concept concept, EngineStudy study) {
        Optional<KnownEngine> known = lately.get(question);
        if (known.isPresent()) {
            return known.get();
        }
        KnownEngine engine = new KnownEngine(study.balance(concept));
        balances.incrementAndGet();
        lately.put(question, engine);
        return engine;
    }

    /** @return engines balanced so far for the page of a concept */
    long balances() {
        return balances.get();
    }

    /** Answers where a number comes from: one step of its trail, which opens the next ones. */
    private void why(Context request) {
        RequestBody body = RequestBody.of(request);
        Question sent = Question.of(body);
        Question question = new Question(sent.name(), workspace.text(body), sent.changes());
        KnownEngine engine = engine(question, Asker.of(request));
        LocalServer.json(request, step(engine.trail(), engine.balance().warnings(), body.text("path")));
    }

    /**
     * @param trail trail
     * @param warnings warnings of the same result
     * @param path number asked for
     * @return one step of its trail
     * @throws Refusal with status 404 if the trail does not have it
     */
    static Map<String, Object> step(Trail trail, List<Warning> warnings, String path) {
        if (!trail.has(path)) {
            throw new Refusal(404, "nothing is known about the number " + path);
        }
        Map<String, Object> step = new TrailView(trail, warnings).json(path, 1);
        step.put("shown", shown(trail, path));
        if (step.get("inputs") instanceof List<?> inputs) {
            step.put(
                    "inputs",
                    trail.entry(path).orElseThrow().inputs().stream()
                            .limit(inputs.size())
                            .map(input -> Map.of("path", input, "shown", shown(trail, input)))
                            .toList());
        }
        return step;
    }

    private static String shown(Trail trail, String path) {
        Trail.Entry entry = trail.entry(path).orElseThrow();
        return Notation.ofUnit(entry.unit()).writeWithUnit(entry.value(), 6);
    }

    private void report(Context request) {
        RequestBody body = RequestBody.of(request);
        Question question = Question.of(body);
        // The report embeds the text with the changes in place, so that the file alone gives its numbers again.
        Concept concept = reader.parse(question.name(), edited(question), Map.of());
        Asker asker = Asker.of(request);
        String html = workers.ask(asker, study -> {
            EngineBalance balance = study.balance(concept);
            ConceptPage page = new ConceptPage(balance, vehicle(balance), Optional.empty(), software);
            FeedAnswer.of(() -> study, balance).addTo(page);
            return page.html();
        });
        String id = finished.put(asker, FinishedReports.fileName(concept.name()), html, body.text("form"));
        LocalServer.json(request, Map.of("id", id));
    }

    /** The vehicle that a concept describes, on its engine. */
    private Optional<VehicleSizing> vehicle(EngineBalance balance) {
        Optional<VehiclePlan> plan = vehicles.of(balance.concept());
        plan.ifPresent(p -> VehicleRoutes.requireInside(workspace, p));
        return plan.map(p -> VehicleRuns.size(p, balance));
    }

    /** All drawings for an audience in one archive, with the vehicle that the concept describes. */
    private void figures(Context request) {
        RequestBody body = RequestBody.of(request);
        Question question = Question.of(body);
        Asker asker = Asker.of(request);
        EngineBalance balance = engine(question, asker).balance();
        request.contentType("application/zip")
                .result(workers.print(
                        asker,
                        () -> SlideFiles.archive(
                                new SlideFiles(balance.concept().name(), EngineSlides.of(balance, vehicle(balance)))
                                        .files())));
    }

    /** Claims about an engine with its changes, as text to begin with. */
    private void claims(Context request) {
        RequestBody body = RequestBody.of(request);
        Question sent = Question.of(body);
        Question question = new Question(sent.name(), workspace.text(body), sent.changes());
        EngineBalance balance = engine(question, Asker.of(request)).balance();
        LocalServer.json(request, Map.of("text", OpeningClaims.of(balance)));
    }

    private void text(Context request) {
        LocalServer.json(request, Map.of("text", edited(Question.of(RequestBody.of(request)))));
    }

    private void save(Context request) {
        RequestBody body = RequestBody.of(request);
        Question question = Question.of(body);
        String text = body.flag("whole") ? question.text() : edited(question);
        Workspace.Document saved = workspace.save(body.text("as"), text, body.text("version"));
        LocalServer.json(request, saved.map());
    }

    /**
     * Writes the changes into the text and reads it again: what is saved must mean what was shown, input by input.
     *
     * @throws Refusal if it does not
     */
    private String edited(Question question) {
        Concept shown = concept(question);
        String text = TomlEdit.apply(
                question.text(), question.changes(), shown.document().inputs());
        List<?> written =
                reader.parse(question.name(), text, Map.of()).document().inputs();
        if (!written.equals(shown.document().inputs())) {
            throw new Refusal(422, "the changes do not fit into this file's way of writing; change it in an editor");
        }
        return text;
    }
}
