package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.OperatingSeries;
import dev.penstock.app.options.OptionReader;
import dev.penstock.app.options.ReportOption;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.OperatingCommand;
import dev.penstock.cycles.questions.OperatingOutcome;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.concept.FeedAnswer;
import dev.penstock.reports.engine.OffDesignView;
import dev.penstock.study.EngineRuns;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs a built engine away from its design point. */
@Command(
        name = "off-design",
        description =
                "Sizes an engine at its design point, then runs that hardware throttled, at another mixture ratio or"
                        + " with other tank pressures, with stall and cavitation margins.")
final class OffDesignCommand extends BaseCommand {

    private static final Range TANKS = Range.of(1e4, 6e7);

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Option(
            names = "--throttle",
            paramLabel = "FROM..TO:COUNT",
            defaultValue = "1..0.5:6",
            description = "chamber pressure over that of the design, one value, several as 1,0.7 or a range; default"
                    + " ${DEFAULT-VALUE}")
    private String throttle;

    @Option(
            names = "--mixture-ratio",
            paramLabel = "FROM..TO:COUNT",
            description =
                    "oxidizer over fuel leaving the tanks, written like the throttle; that of the design otherwise")
    private Optional<String> mixtureRatio = Optional.empty();

    @Option(
            names = "--oxidizer-tank-pressure",
            paramLabel = "P",
            description = "pressure in the oxidizer tank; that of the design otherwise")
    private Optional<String> oxidizerTank = Optional.empty();

    @Option(
            names = "--fuel-tank-pressure",
            paramLabel = "P",
            description = "pressure in the fuel tank; that of the design otherwise")
    private Optional<String> fuelTank = Optional.empty();

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private ReportOption report;

    OffDesignCommand(Session session) {
        super(session);
    }

    @Override
    protected String mainRows() {
        return "points";
    }

    @Override
    public Integer call() {
        List<OperatingCommand> commands = commands();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = session.runs();
        EngineStudy study = runs.study();
        EngineBalance design = study.balance(runs.read(found.file(), found.changes()));
        List<OperatingOutcome> outcomes = study.offDesign(design, commands);
        OffDesignView view = new OffDesignView(design, outcomes);
        List<Path> page = report.write(() -> new ConceptReports(session)
                .of(design, FeedAnswer.of(() -> study, design), List.of(view.section()), command(), options()));
        answer(view::json, () -> view.text() + written(page));
        return outcomes.stream().anyMatch(o -> o.point().isPresent()) ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }

    private List<OperatingCommand> commands() {
        OptionReader reader = new OptionReader();
        List<Double> throttles = OperatingSeries.throttles(reader, throttle);
        List<OptionalDouble> ratios = OperatingSeries.mixtureRatios(reader, mixtureRatio)
                .map(all -> all.stream().map(OptionalDouble::of).toList())
                .orElseGet(() -> List.of(OptionalDouble.empty()));
        OptionalDouble oxidizer = reader.optional("--oxidizer-tank-pressure", oxidizerTank, Dimension.PRESSURE, TANKS);
        OptionalDouble fuel = reader.optional("--fuel-tank-pressure", fuelTank, Dimension.PRESSURE, TANKS);
        reader.finish();
        List<OperatingCommand> commands = new ArrayList<>();
        for (OptionalDouble ratio : ratios) {
            throttles.forEach(t -> commands.add(new OperatingCommand(t, ratio, oxidizer, fuel)));
        }
        return commands;
    }
}
