package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.OptionReader;
import dev.penstock.app.options.ReportOption;
import dev.penstock.app.options.SamplesOption;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.questions.Merit;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.concept.LimitView;
import dev.penstock.reports.engine.CycleReachView;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.study.UncertaintyView;
import dev.penstock.study.CycleReachRuns;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.UncertaintyResult;
import dev.penstock.study.UncertaintyRuns;
import dev.penstock.study.VehicleRuns;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds how far a concept reaches within its hardware limits. */
@Command(
        name = "limit",
        description =
                "Finds the highest chamber pressure that keeps every limit and names the limit that binds, the one that is best"
                        + " for impulse or start mass, and what each limit is worth.")
final class LimitCommand extends BaseCommand {

    private static final String CYCLES = "cycles";
    private static final String UNCERTAINTY = "uncertainty";
    private static final Range TEMPERATURES = Range.of(300, 2500);
    private static final Range SHARES = Range.of(Double.MIN_VALUE, 1);

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Option(
            names = "--cycles",
            description =
                    "also search every other cycle with turbines, for the same propellants and thrust, over a range"
                            + " of turbine temperatures; interrupting it keeps what is done")
    private boolean cycles;

    @Option(
            names = "--temperatures",
            paramLabel = "FROM..TO:COUNT",
            description = "turbine temperatures for --cycles, for example 600..1100K:6 (the default)")
    private Optional<String> temperatures = Optional.empty();

    @Option(
            names = "--exhaust-loss",
            paramLabel = "SHARE",
            description =
                    "what dumped turbine gas may cost of the specific impulse, for --cycles; limits.exhaust_loss unless given")
    private Optional<String> exhaustLoss = Optional.empty();

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private SamplesOption samples;

    @Mixin
    private ReportOption report;

    LimitCommand(Session session) {
        super(session);
    }

    @Override
    protected Optional<Set<String>> furtherParts() {
        return Optional.of(Set.of(CYCLES, UNCERTAINTY));
    }

    @Override
    public Integer call() {
        OptionReader options = new OptionReader();
        List<Double> range = temperatures(options);
        OptionalDouble loss = options.optional("--exhaust-loss", exhaustLoss, Dimension.RATIO, SHARES);
        options.finish();
        int count = samples.count();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = session.runs();
        Concept concept = runs.read(found.file(), found.changes());
        LimitResult result = runs.study()
                .limit(concept, new VehicleRuns(runs).leastStartMass(concept).orElseGet(() -> Merit.impulse(concept)));
        Optional<CycleReachView> others = cycles ? Optional.of(others(runs, concept, range, loss)) : Optional.empty();
        Optional<UncertaintyResult> uncertainty =
                count == 0 ? Optional.empty() : Optional.of(sample(runs, concept, count));
        List<PageSection> further = Stream.concat(
                        others.map(CycleReachView::section).stream(),
                        uncertainty.map(UncertaintyView::section).stream())
                .toList();
        List<Path> pages = report.write(() -> new ConceptReports(session).of(result, others, further, options()));
        Supplier<Map<String, Object>> document = () -> {
            Map<String, Object> map = LimitView.json(result);
            others.ifPresent(o -> map.put(CYCLES, o.json()));
            uncertainty.ifPresent(u -> map.put(UNCERTAINTY, UncertaintyView.json(u)));
            return map;
        };
        Supplier<String> text = () -> LimitView.text(result)
                + others.map(o -> System.lineSeparator() + o.text()).orElse("")
                + uncertainty
                        .map(u -> System.lineSeparator() + UncertaintyView.text(u))
                        .orElse("")
                + written(pages);
        return others.map(o -> answer(document, text, o::csv)).orElseGet(() -> answer(document, text));
    }

    private UncertaintyResult sample(EngineRuns runs, Concept concept, int count) {
        try (ConsoleProgress progress = ConsoleProgress.of(session, "searching", count, false)) {
            return new UncertaintyRuns(runs).runReach(concept, count, progress);
        }
    }

    private CycleReachView others(EngineRuns runs, Concept concept, List<Double> range, OptionalDouble loss) {
        CycleReachRuns reach = new CycleReachRuns(runs, loss);
        try (Interruption interruption = new Interruption();
                ConsoleProgress progress = ConsoleProgress.of(session, "searching", 2, false)) {
            return new CycleReachView(reach.run(concept, range, progress, interruption::requested));
        }
    }

    private List<Double> temperatures(OptionReader options) {
        boolean alone = temperatures.isPresent() || exhaustLoss.isPresent();
        if (alone && !cycles) {
            options.problem("--temperatures, --exhaust-loss", "alone", "they need --cycles");
        }
        return temperatures
                .map(text -> options.series(
                        "--temperatures",
                        text,
                        Dimension.TEMPERATURE,
                        TEMPERATURES,
                        "write temperatures with their unit, such as 600..1100K:6"))
                .orElse(CycleReachRuns.USUAL)
                .stream()
                .sorted()
                .distinct()
                .toList();
    }
}
