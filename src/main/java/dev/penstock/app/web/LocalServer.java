package dev.penstock.app.web;

import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.quantities.UnitSystem;
import dev.penstock.reports.text.JsonText;
import dev.penstock.reports.text.Software;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Sweep;
import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/** The running local page: a server for one person's browser, on the loopback interface only. */
public final class LocalServer implements AutoCloseable {

    /** Charsets are written out: without them the server would send Latin-1 and lose signs. */
    static final String HTML = "text/html;charset=utf-8";

    static final String JSON = "application/json;charset=utf-8";
    /** One more than a client may have, so that another one finds one. */
    private static final int WORKERS = 3;

    private static final int LONG_WORK = 20;
    /** Cookie with the units that this browser's reader has chosen. */
    static final String UNITS = "penstock-units";

    private final Javalin server;
    private final Gate gate = new Gate();
    private final RequestWorkers workers;
    private final SweepJobs sweeps;
    private final EngineRoutes engines;
    private final WarmUp warmUp;
    private final VehicleRoutes vehicles;
    private final ClaimsRoutes claims;
    private final SearchRoutes searches;

    /**
     * What a server works with.
     *
     * @param home home folder
     * @param fluids fluids of that folder
     * @param workspace folder whose files the browser may read and write
     * @param software what the numbers are made with
     * @param port port; 0 for any that is free
     * @param patience how long one request may take
     * @param defects told of failures that should not happen
     * @param requests told of every request in one line: method, path, status and time
     */
    public record Settings(
            Path home,
            FluidLibrary fluids,
            Path workspace,
            Software software,
            int port,
            Duration patience,
            Consumer<Throwable> defects,
            Consumer<String> requests) {}

    private LocalServer(Settings settings) {
        EngineRuns runs = new EngineRuns(settings.home(), settings.fluids());
        Workspace workspace = new Workspace(settings.workspace());
        ConceptReader reader = new ConceptReader(settings.fluids());
        workers = new RequestWorkers(runs, WORKERS, settings.patience());
        warmUp = new WarmUp(settings.fluids(), reader, workers);
        Duration longest = settings.patience().multipliedBy(LONG_WORK);
        sweeps = new SweepJobs(new Sweep(runs), longest);
        FinishedReports finished = new FinishedReports(workers);
        engines = new EngineRoutes(workspace, reader, workers, warmUp, finished, settings.software(), settings.home());
        vehicles = new VehicleRoutes(workspace, reader, workers, finished, settings.software(), longest);
        claims = new ClaimsRoutes(settings, workspace, runs, finished, longest);
        searches = new SearchRoutes(workspace, runs, finished, settings.software(), longest);
        server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.startup.startupWatcherEnabled = false;
            config.jetty.addConnector((jetty, http) -> LoopbackConnector.of(jetty, http, settings.port()));
            RoutesConfig routes = config.routes;
            routes.before(gate::check);
            routes.before(request -> UnitSystem.named(
                            Optional.ofNullable(request.cookie(UNITS)).orElse(""))
                    .choose());
            pages(new Site(), routes);
            engines.addTo(routes);
            new StudyRoutes(workspace, reader, workers, sweeps).addTo(routes);
            new StudyFileRoutes(workspace).addTo(routes);
            vehicles.addTo(routes);
            claims.addTo(routes);
            searches.addTo(routes);
            routes.get("/shown/{id}", finished::show);
            FailureAnswers.addTo(config, settings.defects());
            config.requestLogger.http((request, milliseconds) -> settings.requests()
                    .accept(request.method() + " " + request.path() + " "
                            + request.res().getStatus() + " " + Math.round(milliseconds) + " ms"));
        });
    }

    /**
     * @param settings what it works with
     * @return the server, serving
     */
    public static LocalServer start(Settings settings) {
        LocalServer server = new LocalServer(settings);
        server.server.start();
        return server;
    }

    /**
     * Balances an example in the background, so that the first question is not the slow one.
     *
     * @return done when that has ended; true if the example could be balanced
     */
    public CompletableFuture<Boolean> warmUp() {
        return warmUp.start();
    }

    /** @return address to open, with the token */
    public String address() {
        return "http://" + LoopbackConnector.HOST + ":" + server.port() + "/?token=" + gate.token();
    }

    /** @return engines balanced so far for the page of a concept; what is drawn or traced again counts no more */
    long balances() {
        return engines.balances();
    }

    private void pages(Site site, RoutesConfig routes) {
        for (Site.Page page : Site.PAGES) {
            routes.get(page.path(), request -> {
                if (request.queryParam("token") == null) {
                    request.contentType(HTML).result(site.html(page));
                } else {
                    gate.admit(request);
                    request.redirect("/");
                }
            });
        }
        routes.get("/penstock.css", request -> request.contentType("text/css;charset=utf-8")
                .result(site.style()));
        routes.get("/glossary.txt", request -> request.contentType("text/plain;charset=utf-8")
                .result(site.glossary()));
        routes.get("/script/{name}", request -> request.contentType("text/javascript;charset=utf-8")
                .result(site.script(request.pathParam("name"))
                        .orElseThrow(() -> new Refusal(404, "there is no such script"))));
        routes.get("/favicon.ico", request -> request.status(204));
    }

    static void json(Context request, Map<String, ?> map) {
        request.contentType(JSON).result(JsonText.compact(map));
    }

    @Override
    public void close() {
        server.stop();
        sweeps.close();
        vehicles.close();
        claims.close();
        searches.close();
        workers.close();
    }
}
