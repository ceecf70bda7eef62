package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.ReportOption;
import dev.penstock.app.options.SamplesOption;
import dev.penstock.reports.vehicle.TradeView;
import dev.penstock.study.PropellantPair;
import dev.penstock.study.TradeResult;
import dev.penstock.study.TradeRuns;
import dev.penstock.study.sample.TradeUncertainty;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts propellant pairs side by side on one mission. */
@Command(
        name = "trade",
        description =
                "Runs the engine concept of a vehicle with one propellant pair after the other and sizes the vehicle"
                        + " with each: start mass, dry mass, tank volume, height, and where a single stage stops closing.")
final class TradeCommand extends BaseCommand {

    @Parameters(
            paramLabel = "CASE",
            description = "concept file with a table [vehicle], or vehicle file, whose first stage gives the engine")
    private String file;

    @Option(
            names = "--pair",
            paramLabel = "OXIDIZER/FUEL/RATIO",
            description = "pair to try, for example oxygen/methane/3.4; may be repeated; otherwise kerosene, methane,"
                    + " propane, hydrogen, ethanol with oxygen, and kerosene with peroxide")
    private List<String> pairs = List.of();

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private SamplesOption samples;

    @Mixin
    private ReportOption report;

    TradeCommand(Session session) {
        super(session);
    }

    @Override
    protected String mainRows() {
        return "pairs";
    }

    @Override
    protected Optional<Set<String>> furtherParts() {
        return Optional.of(Set.of());
    }

    @Override
    public Integer call() {
        List<PropellantPair> tried = pairs.isEmpty()
                ? PropellantPair.usual()
                : pairs.stream().map(PropellantPair::parse).toList();
        int count = samples.count();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        TradeRuns runs = new TradeRuns(session.runs());
        TradeResult result;
        try (ConsoleProgress progress = ConsoleProgress.of(session, "balancing", tried.size(), false)) {
            result = runs.trade(found.file(), tried, found.changes(), progress);
        }
        if (count > 0) {
            int all = count * tried.size();
            try (ConsoleProgress progress = ConsoleProgress.of(session, "sampling", all, false)) {
                result = new TradeUncertainty(session.runs(), count).of(result, progress);
            }
        }
        TradeResult shown = result;
        List<Path> page = report.write(() -> Map.of(
                "trade-" + ConceptReports.slug(shown.plan().name()) + ".html",
                record(found).addTo(TradeView.html(shown, new ConceptReports(session).software()))));
        answer(() -> TradeView.json(shown), () -> TradeView.text(shown) + written(page));
        boolean any = shown.candidates().stream()
                .anyMatch(c -> c.row().flatMap(r -> r.sizing()).isPresent());
        return any ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }
}
