package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.ReportOption;
import dev.penstock.errors.InvalidInput;
import dev.penstock.reports.study.SweepView;
import dev.penstock.study.Axis;
import dev.penstock.study.Measure;
import dev.penstock.study.Sweep;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Balances a concept over a range of inputs. */
@Command(
        name = "sweep",
        description =
                "Balances a concept at every combination of some inputs, over all processors. Interrupting it keeps"
                        + " what is done.")
final class SweepCommand extends BaseCommand {

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Option(
            names = "--vary",
            paramLabel = "PATH=FROM..TO:COUNT",
            description = "input to vary, for example engine.chamber_pressure=4..20MPa:9, or with words"
                    + " propellants.fuel=methane,rp-1; may be given several times")
    private List<String> vary = new ArrayList<>();

    @Option(
            names = "--samples",
            paramLabel = "N",
            defaultValue = "0",
            description =
                    "engines to sample about each combination, from the spread of its uncertain inputs; gives each"
                            + " figure a band from the 5th to the 95th percentile")
    private int samples;

    @Option(
            names = "--figure",
            paramLabel = "PATH",
            split = ",",
            description = "further figure to show, by its path in the trail, for example pumps.fuel-pump.speed_rad_s")
    private List<String> figures = new ArrayList<>();

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private ReportOption report;

    SweepCommand(Session session) {
        super(session);
    }

    @Override
    protected Optional<Set<String>> furtherParts() {
        return Optional.of(Set.of());
    }

    @Override
    public Integer call() {
        List<Axis> axes = axes();
        List<Measure> further = further();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        Sweep sweep = new Sweep(session.runs());
        int count = axes.stream().mapToInt(a -> a.values().size()).reduce(1, (a, b) -> Math.min(a * b, 1_000_000))
                * (1 + Math.min(Math.max(0, samples), 1000));
        try (Interruption interruption = new Interruption()) {
            Sweep.Result result;
            try (ConsoleProgress progress = ConsoleProgress.of(session, "balancing", count, false)) {
                result = sweep.run(found.file(), found.changes(), axes, samples, progress, interruption::requested);
            }
            return show(found, result, further);
        }
    }

    private int show(CaseFiles.Case found, Sweep.Result result, List<Measure> further) {
        SweepView view = new SweepView(result, further);
        List<Path> pages = report.write(() -> {
            String name = ConceptReports.slug(result.name()) + "-sweep";
            Map<String, String> files = new LinkedHashMap<>();
            files.put(name + ".html", record(found).addTo(view.html(new ConceptReports(session).software())));
            files.put(name + ".csv", view.csv());
            return files;
        });
        answer(view::json, () -> view.text() + written(pages), view::csv);
        return result.points().stream().anyMatch(p -> p.balance().isPresent()) ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }

    private List<Measure> further() {
        return figures.stream()
                .map(path -> Measure.named(path)
                        .orElseThrow(() -> new InvalidInput(List.of(new InvalidInput.Problem(
                                "",
                                "--figure",
                                path,
                                "write the path of a figure of an engine, for example pumps.fuel-pump.speed_rad_s")))))
                .toList();
    }

    private List<Axis> axes() {
        List<Axis> axes = new ArrayList<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        for (String text : vary) {
            try {
                axes.add(Axis.parse(text));
            } catch (InvalidInput e) {
                problems.addAll(e.problems());
            }
        }
        if (vary.isEmpty()) {
            problems.add(new InvalidInput.Problem(
                    "", "--vary", "missing", "write what to vary, for example engine.chamber_pressure=4..20MPa:9"));
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
        return axes;
    }
}
