package dev.penstock.app;

import dev.penstock.cycles.Concept;
import dev.penstock.cycles.LimitResult;
import dev.penstock.errors.InvalidInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Units;
import dev.penstock.reports.CycleReachView;
import dev.penstock.reports.LimitView;
import dev.penstock.reports.PageSection;
import dev.penstock.reports.UncertaintyView;
import dev.penstock.study.Axis;
import dev.penstock.study.CycleReachRuns;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.UncertaintyResult;
import dev.penstock.study.UncertaintyRuns;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds how far a concept reaches within its hardware limits. */
@Command(
        name = "limit",
        description =
                "Finds the highest chamber pressure that keeps every hardware limit, names the limit that binds, and"
                        + " what each limit is worth.")
final class LimitCommand extends BaseCommand {

    private static final double LOWEST = 300;
    private static final double HIGHEST = 2500;

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
            description = "what dumped turbine gas may cost of the specific impulse, for --cycles; 5 %% unless given")
    private Optional<String> exhaustLoss = Optional.empty();

    @Option(
            names = "--csv",
            description = "with --cycles: print a comma-separated table, in SI units, and nothing else")
    private boolean csv;

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
    public Integer call() {
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = new EngineRuns(session.home(), session.fluids());
        Concept concept = runs.read(found.file(), found.changes());
        List<Double> range = temperatures();
        double loss = exhaustLoss();
        int count = samples.count();
        LimitResult result = runs.study().limit(concept);
        Optional<CycleReachView> others = cycles ? Optional.of(others(concept, range, loss)) : Optional.empty();
        Optional<UncertaintyResult> uncertainty = count == 0 ? Optional.empty() : Optional.of(sample(concept, count));
        List<PageSection> further = Stream.concat(
                        others.map(CycleReachView::section).stream(),
                        uncertainty.map(UncertaintyView::section).stream())
                .toList();
        List<Path> pages = report.write(() -> new ConceptReports(session).of(result, others, further, record(found)));
        if (csv && !json()) {
            session.out().print(others.map(CycleReachView::csv).orElse(""));
            session.out().flush();
            return ExitCode.OK;
        }
        return answer(
                () -> {
                    Map<String, Object> map = LimitView.json(result);
                    others.ifPresent(o -> map.put("cycles", o.json()));
                    uncertainty.ifPresent(u -> map.put("uncertainty", UncertaintyView.json(u)));
                    return map;
                },
                () -> LimitView.text(result)
                        + others.map(o -> System.lineSeparator() + o.text()).orElse("")
                        + uncertainty
                                .map(u -> System.lineSeparator() + UncertaintyView.text(u))
                                .orElse("")
                        + written(pages));
    }

    private UncertaintyResult sample(Concept concept, int count) {
        try (ConsoleProgress progress = ConsoleProgress.of(session, "searching", count, false)) {
            return new UncertaintyRuns(session.home(), session.fluids()).runReach(concept, count, progress);
        }
    }

    private CycleReachView others(Concept concept, List<Double> range, double loss) {
        CycleReachRuns runs = new CycleReachRuns(session.home(), session.fluids(), loss);
        try (Interruption interruption = new Interruption();
                ConsoleProgress progress = ConsoleProgress.of(session, "searching", 2, false)) {
            return new CycleReachView(runs.run(concept, range, progress, interruption::requested));
        }
    }

    private List<Double> temperatures() {
        boolean alone = temperatures.isPresent() || exhaustLoss.isPresent() || csv;
        if (alone && !cycles) {
            throw new InvalidInput("", "--temperatures, --exhaust-loss, --csv", "alone", "they need --cycles");
        }
        if (temperatures.isEmpty()) {
            return CycleReachRuns.USUAL;
        }
        Axis axis = Axis.parse("turbine.temperature=" + temperatures.get());
        return axis.values().stream().map(this::kelvin).sorted().distinct().toList();
    }

    private double exhaustLoss() {
        if (exhaustLoss.isEmpty()) {
            return CycleReachRuns.USUAL_EXHAUST_LOSS;
        }
        Optional<Double> value = Units.parse(exhaustLoss.get(), Dimension.RATIO);
        if (value.isEmpty() || !(value.get() > 0 && value.get() <= 1)) {
            throw new InvalidInput("", "--exhaust-loss", exhaustLoss.get(), "allowed is a share of 1, such as 0.05");
        }
        return value.get();
    }

    private double kelvin(String text) {
        Optional<Double> value = Units.parse(text, Dimension.TEMPERATURE);
        if (value.isEmpty() || !(value.get() >= LOWEST && value.get() <= HIGHEST)) {
            throw new InvalidInput(
                    "", "--temperatures", text, "allowed are temperatures from 300 K to 2500 K, such as 600..1100K:6");
        }
        return value.get();
    }
}
