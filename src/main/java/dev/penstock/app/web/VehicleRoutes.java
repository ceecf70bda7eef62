package dev.penstock.app.web;

import dev.penstock.chamber.StandardAtmosphere1976;
import dev.penstock.input.InputFile;
import dev.penstock.reports.Software;
import dev.penstock.reports.VehicleView;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.StageReturn;
import dev.penstock.vehicle.VehiclePlan;
import dev.penstock.vehicle.VehicleReader;
import dev.penstock.vehicle.VehicleSizing;
import io.javalin.Javalin;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Sizes the vehicles of the workspace, on assumed losses or on those of their own flight. */
final class VehicleRoutes {

    private final Workspace workspace;
    private final VehicleRuns runs;
    private final Desk desk;
    private final Shelf shelf;
    private final Software software;

    VehicleRoutes(Workspace workspace, VehicleRuns runs, Desk desk, Shelf shelf, Software software) {
        this.workspace = workspace;
        this.runs = runs;
        this.desk = desk;
        this.shelf = shelf;
        this.software = software;
    }

    void addTo(Javalin server) {
        server.post("/api/vehicle", this::size);
    }

    private void size(Context request) {
        Body body = Body.of(request);
        Workspace.Document document = workspace.read(body.text("file"));
        Path file = workspace.place(document.name());
        Map<String, String> changes = body.changes("changes");
        plan(file, document, changes).ifPresent(plan -> requireInside(workspace, plan));
        boolean fly = body.flag("fly");
        String html = desk.ask("", 0, study -> fly ? flown(file, changes) : sized(file, changes));
        String name = Shelf.fileName(document.name().replace(".toml", ""));
        Workbench.json(request, Map.of("id", shelf.put(name, html, body.text("form"))));
    }

    private static Optional<VehiclePlan> plan(Path file, Workspace.Document document, Map<String, String> changes) {
        boolean concept = InputFile.parse(document.name(), document.text(), changes)
                .root()
                .has("cycle");
        return concept
                ? VehicleReader.readConcept(document.name(), document.text(), changes)
                : Optional.of(VehicleReader.read(file, changes));
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

    private String sized(Path file, Map<String, String> changes) {
        VehicleSizing sizing = runs.size(file, changes, Progress.NONE);
        return VehicleView.html(sizing, software);
    }

    private String flown(Path file, Map<String, String> changes) {
        FlownSizing flown = runs.fly(file, changes, Progress.NONE, Progress.NONE);
        return VehicleView.html(flown, StageReturn.of(flown, new StandardAtmosphere1976()), software);
    }
}
