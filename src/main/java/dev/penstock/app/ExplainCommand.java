package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.OptionReader;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.cycles.trail.LimitTrail;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.Warning;
import dev.penstock.input.InputFile;
import dev.penstock.input.Spelling;
import dev.penstock.provenance.Trail;
import dev.penstock.reports.concept.FeedAnswer;
import dev.penstock.reports.page.TrailView;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.study.VehicleTrail;
import dev.penstock.vehicle.reading.VehicleReader;
import dev.penstock.vehicle.stage.VehicleFigures;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says where a number comes from. */
@Command(
        name = "explain",
        description = {
            "Says where a number of a balance comes from: equation, values that went in, source, range, uncertainty, and the"
                    + " same for each of those values.",
            "Without a path it lists all of them."
        })
final class ExplainCommand extends BaseCommand {

    private static final int DEEPEST = 40;

    @Parameters(
            index = "0",
            paramLabel = "CASE",
            description = "concept or vehicle file, or the name of one in cycles/, or a page made from one")
    private String file;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PATH",
            description = "number to explain, for example engine.isp_vacuum_s or pumps.fuel-pump.power_W")
    private Optional<String> path = Optional.empty();

    @Option(names = "--depth", paramLabel = "N", defaultValue = "3", description = "steps to follow back; default 3")
    private String depth;

    @Option(names = "--limit", description = "explain the engine at the highest chamber pressure within its limits")
    private boolean limit;

    @Mixin
    private ChangeOptions changes;

    ExplainCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        OptionReader reader = new OptionReader();
        if (!depth.matches("\\d{1,2}") || Integer.parseInt(depth) > DEEPEST) {
            reader.problem("--depth", depth, "allowed is a whole number from 0 to " + DEEPEST);
        }
        reader.finish();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = session.runs();
        if (!InputFile.read(found.file(), found.changes()).root().has("cycle")) {
            VehicleSizing vehicle = new VehicleRuns(runs).size(found.file(), found.changes(), Progress.NONE);
            return explain(VehicleFigures.trail(vehicle), vehicle.warnings());
        }
        Concept concept = runs.read(found.file(), found.changes());
        EngineStudy study = runs.study();
        Optional<LimitResult> reach = limit ? Optional.of(study.limit(concept)) : Optional.empty();
        EngineBalance balance = reach.map(LimitResult::balance).orElseGet(() -> study.balance(concept));
        Trail trail = BalanceTrail.of(balance);
        reach.ifPresent(r -> LimitTrail.extend(trail, r));
        if (limit) {
            return explain(trail, balance.warnings());
        }
        FeedAnswer.of(() -> study, balance).addTo(trail, balance);
        new VehicleReader(session.fluids())
                .of(concept)
                .ifPresent(plan -> trail.include(VehicleTrail.ofConcept(VehicleRuns.size(plan, balance), balance)));
        return explain(trail, balance.warnings());
    }

    private int explain(Trail trail, List<Warning> warnings) {
        if (path.isEmpty()) {
            return answer(() -> listJson(trail), () -> listText(trail));
        }
        if (!trail.has(path.get())) {
            throw new InvalidInput("", "PATH", path.get(), "did you mean " + nearest(trail, path.get()) + "?");
        }
        TrailView view = new TrailView(trail, warnings);
        int steps = Integer.parseInt(depth);
        return answer(() -> view.json(path.get(), steps), () -> view.text(path.get(), steps));
    }

    private static String nearest(Trail trail, String path) {
        return trail.entries().stream()
                .map(Trail.Entry::path)
                .min(Comparator.comparingInt(p -> Spelling.distance(p, path)))
                .orElseThrow();
    }

    private static Map<String, Object> listJson(Trail trail) {
        Map<String, Object> values = new LinkedHashMap<>();
        trail.entries().forEach(e -> values.put(e.path(), e.value()));
        return Map.of("values", values);
    }

    private static String listText(Trail trail) {
        StringBuilder text = new StringBuilder();
        trail.entries().stream().filter(e -> !e.path().contains(".profile.")).forEach(e -> text.append(e.path())
                .append(System.lineSeparator()));
        return text.toString();
    }
}
