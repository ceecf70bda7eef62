package dev.penstock.app.web;

import dev.penstock.app.answer.EngineAnswer;
import dev.penstock.app.answer.VehicleAnswer;
import dev.penstock.app.edit.TomlEdit;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.UnitSystem;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.vehicle.VehicleView;
import dev.penstock.study.VehicleRuns;
import dev.penstock.study.VehicleTrail;
import dev.penstock.vehicle.FlownSizer;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.reading.VehicleReader;
import dev.penstock.vehicle.stage.VehicleSizing;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** Sizes the vehicles of the workspace at once, and flies them while the page watches. */
final class VehicleRoutes implements AutoCloseable {

    private static final int KEPT = 24;
    private static final int VEHICLES = 4;

    private final Workspace workspace;
    private final ConceptReader reader;
    private final VehicleReader vehicles;
    private final RequestWorkers workers;
    private final FinishedReports finished;
    private final Software software;
    private final Jobs<Sized> flights;
    /** Engines of late, by the text of their files: they stay while the vehicle around them changes. */
    private final Recent<String, EngineBalance> engines = new Recent<>(KEPT);

    /** Vehicles of late: each number on a page opens a step of the same trail. */
    private final Recent<Known, Sized> lately = new Recent<>(VEHICLES);

    /** What a sizing follows from: what is asked, and the text of each engine's file. */
    private record Known(Question question, Map<Path, String> engines) {}

    /** What is asked, and the unsaved changes of an engine that is open on another page. */
    private record Question(
            Path place,
            String name,
            String text,
            Map<String, String> changes,
            String engine,
            Map<String, String> engineChanges) {}

    /** A sized vehicle with what it was made from, and its trail once somebody has asked for that. */
    private static final class Sized {

        private final VehicleSizing sizing;
        private final Optional<FlownSizing> flown;
        private final Map<String, EngineBalance> engines;
        private final Question question;
        private final VehiclePlan plan;
        private final List<String> engineFiles;
        private Trail trail;

        Sized(
                VehicleSizing sizing,
                Optional<FlownSizing> flown,
                Map<String, EngineBalance> engines,
                Question question,
                VehiclePlan plan,
                List<String> engineFiles) {
            this.sizing = sizing;
            this.flown = flown;
            this.engines = engines;
            this.question = question;
            this.plan = plan;
            this.engineFiles = engineFiles;
        }

        VehicleSizing sizing() {
            return sizing;
        }

        Optional<FlownSizing> flown() {
            return flown;
        }

        private Optional<AscentResult> flight() {
            return flown.map(FlownSizing::ascent);
        }

        /** @return the trail, made once; nobody writes into it afterwards */
        synchronized Trail trail() {
            if (trail == null) {
                trail = VehicleTrail.of(sizing, flight(), engines);
            }
            return trail;
        }

        Map<String, Object> answer() {
            Map<String, Object> map = new VehicleAnswer(
                            sizing, flight(), flown.map(FlownSizing::warnings).orElse(sizing.warnings()))
                    .map();
            map.put("inputs", inputs(question, plan));
            map.put("engines", engineFiles);
            return map;
        }
    }

    VehicleRoutes(
            Workspace workspace,
            ConceptReader reader,
            RequestWorkers workers,
            FinishedReports finished,
            Software software,
            Duration longest) {
        this.workspace = workspace;
        this.reader = reader;
        this.vehicles = new VehicleReader(reader.fluids());
        this.workers = workers;
        this.finished = finished;
        this.software = software;
        this.flights = new Jobs<>("flight", longest);
    }

    void addTo(RoutesConfig routes) {
        routes.post("/api/vehicle", request -> {
            RequestBody body = RequestBody.of(request);
            LocalServer.json(request, sized(request, body).answer());
        });
        routes.post("/api/vehicle/why", request -> {
            Asker asker = Asker.of(request);
            RequestBody body = RequestBody.of(request);
            Sized sized = flownOrSized(request, body);
            Trail trail = workers.draw(asker, sized::trail);
            LocalServer.json(request, EngineRoutes.step(trail, sized.sizing().warnings(), body.text("path")));
        });
        routes.post("/api/vehicle/report", this::report);
        routes.post("/api/vehicle/save", this::save);
        routes.post("/api/flight", this::fly);
        flights.addTo(routes, "/api/flight");
        routes.get(
                "/api/flight/{id}/result",
                request -> LocalServer.json(
                        request, flights.result(request.pathParam("id")).answer()));
    }

    private Question question(RequestBody body) {
        String name = body.text("file");
        return new Question(
                workspace.place(name),
                name,
                workspace.text(body),
                body.changes("changes"),
                body.text("engine"),
                body.changes("engine_changes"));
    }

    private VehiclePlan plan(Question question) {
        VehiclePlan plan = vehicles.parse(question.place(), question.text(), question.changes());
        requireInside(workspace, plan);
        return plan;
    }

    /**
     * A vehicle names its engines by path; these must stay in the workspace, too.
     *
     * @throws Refusal with status 403 if one does not
     */
    static void requireInside(Workspace workspace, VehiclePlan plan) {
        for (Path engine : plan.engineFiles()) {
            if (!workspace.inside(engine)) {
                throw new Refusal(403, "the vehicle names an engine outside the workspace");
            }
        }
    }

    private Sized sized(Context request, RequestBody body) {
        Question question = question(body);
        VehiclePlan plan = plan(question);
        Map<Path, String> texts = texts(plan, question);
        Known known = new Known(question, texts);
        return lately.get(known)
                .orElseGet(() -> workers.ask(Asker.of(request, body), study -> {
                    Map<Path, EngineBalance> balances = balances(texts, study);
                    VehicleSizing sizing = VehicleRuns.size(plan, balances);
                    Sized sized =
                            new Sized(sizing, Optional.empty(), byName(balances), question, plan, names(balances));
                    lately.put(known, sized);
                    return sized;
                }));
    }

    /** The vehicle that is on the screen. */
    private Sized flownOrSized(Context request, RequestBody body) {
        return body.text("flight").isEmpty() ? sized(request, body) : flights.result(body.text("flight"));
    }

    /** Texts of the files of a vehicle's engines; that of the engine which is open elsewhere with its changes. */
    private Map<Path, String> texts(VehiclePlan plan, Question question) {
        Map<Path, String> texts = new LinkedHashMap<>();
        for (Path file : plan.engineFiles()) {
            String saved = workspace.read(name(file)).text();
            texts.put(file, name(file).equals(question.engine) ? changed(name(file), saved, question) : saved);
        }
        return texts;
    }

    private String changed(String name, String saved, Question question) {
        Map<String, String> changes = question.engineChanges;
        return TomlEdit.apply(
                saved, changes, reader.parse(name, saved, changes).document().inputs());
    }

    private List<String> names(Map<Path, ?> engines) {
        return engines.keySet().stream().map(this::name).toList();
    }

    private String name(Path file) {
        return workspace
                .nameOf(file)
                .orElseThrow(() -> new Refusal(403, "the vehicle names an engine outside the workspace"));
    }

    private Map<Path, EngineBalance> balances(Map<Path, String> texts, EngineStudy study) {
        Map<Path, EngineBalance> balances = new LinkedHashMap<>();
        texts.forEach((file, text) -> balances.put(file, engine(name(file), text, study)));
        return balances;
    }

    private EngineBalance engine(String name, String text, EngineStudy study) {
        Optional<EngineBalance> known = engines.get(text);
        if (known.isPresent()) {
            return known.get();
        }
        EngineBalance balance = study.balance(reader.parse(name, text, Map.of()));
        engines.put(text, balance);
        return balance;
    }

    private static Map<String, EngineBalance> byName(Map<Path, EngineBalance> balances) {
        Map<String, EngineBalance> map = new LinkedHashMap<>();
        balances.values().forEach(b -> map.put(b.concept().name(), b));
        return map;
    }

    /** Every input that the vehicle has, as the page offers it for change. */
    private static List<Map<String, Object>> inputs(Question question, VehiclePlan plan) {
        return EngineAnswer.inputs(
                plan.inputs(), question.text(), question.changes(), InputValue::readable, key -> List.of());
    }

    private void fly(Context request) {
        RequestBody body = RequestBody.of(request);
        Question question = question(body);
        VehiclePlan plan = plan(question);
        Map<Path, String> texts = texts(plan, question);
        Map<Path, EngineBalance> balances = workers.ask(Asker.of(request), study -> balances(texts, study));
        String id = flights.start(Jobs.HUNDREDTHS, job -> {
            FlownSizing flown = new FlownSizer(new StandardAtmosphere1976())
                    .size(plan, VehicleRuns.source(balances), (fraction, what) -> {
                        job.at((int) Math.round(Jobs.HUNDREDTHS * fraction));
                        if (job.stopped()) {
                            throw new CancellationException();
                        }
                    });
            return new Sized(flown.sizing(), Optional.of(flown), byName(balances), question, plan, names(balances));
        });
        LocalServer.json(request, Map.of("id", id));
    }

    private void report(Context request) {
        RequestBody body = RequestBody.of(request);
        Asker asker = Asker.of(request);
        Sized sized = flownOrSized(request, body);
        String html = workers.draw(
                asker,
                () -> UnitSystem.METRIC.reading(() -> sized.flown()
                        .map(f -> VehicleView.html(f, software))
                        .orElseGet(() -> VehicleView.html(sized.sizing(), software))));
        String name =
                FinishedReports.fileName("vehicle-" + sized.sizing().plan().name());
        LocalServer.json(request, Map.of("id", finished.put(asker, name, html, body.text("form"))));
    }

    /** Writes the changes into the text; the plan that it then means must be the one on the screen. */
    private void save(Context request) {
        RequestBody body = RequestBody.of(request);
        Question question = question(body);
        String text = TomlEdit.apply(
                question.text(), question.changes(), plan(question).inputs());
        Path place = workspace.place(body.text("as"));
        if (!vehicles.parse(question.place(), text, Map.of())
                .toString()
                .equals(plan(question).toString())) {
            throw new Refusal(422, "the changes do not fit into this file's way of writing; change it in an editor");
        }
        if (!place.getParent().equals(question.place().getParent())) {
            throw new Refusal(422, "a vehicle stays in its folder, from where it names its engines");
        }
        Workspace.Document saved = workspace.save(body.text("as"), text, body.text("version"));
        LocalServer.json(request, saved.map());
    }

    @Override
    public void close() {
        flights.close();
    }
}
