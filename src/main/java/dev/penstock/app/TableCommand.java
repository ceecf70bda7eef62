package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.OperatingSeries;
import dev.penstock.app.options.OptionReader;
import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.files.OutputFile;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.engine.EngineTableView;
import dev.penstock.reports.text.JsonText;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.EngineTable;
import dev.penstock.study.EngineTable.Surrounding;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a built engine over its settings, for other programs. */
@Command(
        name = "table",
        description =
                "Sizes an engine at its design point, then runs that hardware at every combination of altitude or ambient"
                        + " pressure, throttle and mixture ratio: thrust, specific impulse, flows, exit pressure, separation, for"
                        + " programs that fly it. A setting that does not close keeps its line and says why.")
final class TableCommand extends BaseCommand {

    private static final Range ALTITUDES = Range.of(-1000, 1e6);
    private static final Range PRESSURES = Range.of(0, 1e8);
    private static final List<Double> USUAL_RATIOS = List.of(0.95, 1.0, 1.05);
    private static final int MOST_POINTS = 200_000;
    private static final String CSV = ".csv";
    private static final String JSON = ".json";
    private static final List<String> ENDINGS = List.of(CSV, JSON, ".parquet");

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Option(
            names = "--altitude",
            paramLabel = "FROM..TO:COUNT",
            description = "altitudes in the standard atmosphere, one value, several with commas or a range; 0..45km:10"
                    + " unless given")
    private Optional<String> altitude = Optional.empty();

    @Option(
            names = "--ambient-pressure",
            paramLabel = "FROM..TO:COUNT",
            description = "in place of altitudes: pressures of the air, for example 0..1bar:11")
    private Optional<String> ambient = Optional.empty();

    @Option(
            names = "--throttle",
            paramLabel = "FROM..TO:COUNT",
            defaultValue = "0.6..1:5",
            description = "chamber pressure over that of the design; default ${DEFAULT-VALUE}")
    private String throttle;

    @Option(
            names = "--mixture-ratio",
            paramLabel = "FROM..TO:COUNT",
            description =
                    "oxidizer over fuel leaving the tanks; 0.95, 1 and 1.05 times that of the design unless given")
    private Optional<String> mixtureRatio = Optional.empty();

    @Option(
            names = "--output",
            paramLabel = "FILE",
            description = "write the table to this file, whose name ends in .csv, .json or .parquet")
    private Optional<Path> output = Optional.empty();

    @Mixin
    private ChangeOptions changes;

    TableCommand(Session session) {
        super(session);
    }

    @Override
    protected String mainRows() {
        return "points";
    }

    @Override
    public Integer call() {
        OptionReader reader = new OptionReader();
        List<Surrounding> air = air(reader);
        List<Double> throttles = OperatingSeries.throttles(reader, throttle);
        Optional<List<Double>> ratios = OperatingSeries.mixtureRatios(reader, mixtureRatio);
        long points =
                (long) air.size() * throttles.size() * ratios.map(List::size).orElse(USUAL_RATIOS.size());
        if (points > MOST_POINTS) {
            reader.problem("table", points + " points", "it may have " + MOST_POINTS);
        }
        Optional<OutputFile> place = output.map(path -> new OutputFile("--output", path));
        place.ifPresent(file -> reader.check(() -> file.requireEnding(ENDINGS)));
        reader.finish();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = session.runs();
        EngineStudy study = runs.study();
        EngineBalance design = study.balance(runs.read(found.file(), found.changes()));
        double own = design.concept().mixtureRatio();
        EngineTable table = EngineTable.of(study, design, air, throttles, ratios.orElseGet(() -> USUAL_RATIOS.stream()
                .map(share -> share * own)
                .toList()));
        EngineTableView view = new EngineTableView(table);
        List<Path> files = place.map(file -> List.of(write(file, view))).orElse(List.of());
        answer(view::json, () -> files.isEmpty() ? view.text() : written(files));
        return table.points().stream().anyMatch(p -> p.state().isPresent()) ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }

    private List<Surrounding> air(OptionReader reader) {
        if (ambient.isPresent()) {
            altitude.ifPresent(text ->
                    reader.problem("--altitude", text, "give either altitudes or --ambient-pressure, not both"));
            return rising(reader.series(
                            "--ambient-pressure",
                            ambient.get(),
                            Dimension.PRESSURE,
                            PRESSURES,
                            OperatingSeries.WRITTEN))
                    .map(p -> new Surrounding(OptionalDouble.empty(), p))
                    .toList();
        }
        Atmosphere atmosphere = new StandardAtmosphere1976();
        return rising(reader.series(
                        "--altitude",
                        altitude.orElse("0..45km:10"),
                        Dimension.LENGTH,
                        ALTITUDES,
                        OperatingSeries.WRITTEN))
                .map(h -> new Surrounding(OptionalDouble.of(h), atmosphere.at(h).pressure()))
                .toList();
    }

    private static Stream<Double> rising(List<Double> values) {
        return values.stream().sorted().distinct();
    }

    private Path write(OutputFile file, EngineTableView view) {
        return switch (file.ending(ENDINGS)) {
            case CSV -> file.write(view.csv());
            case JSON -> file.write(JsonText.of(origin().with(view.json())));
            default -> file.write(view.parquet());
        };
    }
}
