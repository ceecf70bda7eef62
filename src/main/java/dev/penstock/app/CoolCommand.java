package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.OptionReader;
import dev.penstock.app.options.ReportOption;
import dev.penstock.cooling.search.FeasibilityMap;
import dev.penstock.cooling.search.JacketSearch;
import dev.penstock.cooling.search.SearchProgress;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.concept.CoolingView;
import dev.penstock.reports.concept.FeedAnswer;
import dev.penstock.study.CoolingRuns;
import dev.penstock.study.EngineRuns;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks for better channels in the jacket of an engine. */
@Command(
        name = "cool",
        description = "Looks for the channels with the smallest pressure drop that keep every limit of the jacket, and"
                + " prints them as lines for the concept file. With --map it also says over chamber pressure and thrust"
                + " whether such a chamber can be cooled.")
final class CoolCommand extends BaseCommand {

    private static final int FEWEST = 20;
    private static final String SERIES = "write several values as a,b,c or a range as from..to:count, with their unit";

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Option(
            names = "--evaluations",
            paramLabel = "N",
            defaultValue = "150",
            description = "jackets to try at most; default ${DEFAULT-VALUE}")
    private String evaluations;

    @Option(
            names = "--circuit",
            paramLabel = "NAME",
            defaultValue = "cooling",
            description = "which of several cooling circuits; default the one that begins at the injector")
    private String circuit;

    @Option(names = "--map", description = "also map what can be cooled")
    private boolean map;

    @Option(
            names = "--pressures",
            paramLabel = "FROM..TO:COUNT",
            defaultValue = "4..24MPa:6",
            description = "chamber pressures of the map; default ${DEFAULT-VALUE}")
    private String pressures;

    @Option(
            names = "--thrusts",
            paramLabel = "T,T,...",
            defaultValue = "30kN,100kN,300kN,1000kN,3000kN",
            description = "vacuum thrusts of the map; default ${DEFAULT-VALUE}")
    private String thrusts;

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private ReportOption report;

    CoolCommand(Session session) {
        super(session);
    }

    @Override
    protected Optional<Set<String>> furtherParts() {
        return Optional.of(Set.of(CoolingView.CHAMBERS));
    }

    @Override
    public Integer call() {
        OptionReader reader = new OptionReader();
        if (!evaluations.matches("\\d{1,5}") || Integer.parseInt(evaluations) < FEWEST) {
            reader.problem("--evaluations", evaluations, "allowed is a whole number from " + FEWEST + " to 99999");
        }
        List<Double> p =
                sorted(reader.series("--pressures", pressures, Dimension.PRESSURE, Range.of(2e4, 1e8), SERIES));
        List<Double> t = sorted(reader.series("--thrusts", thrusts, Dimension.FORCE, Range.of(1, 1e8), SERIES));
        reader.finish();
        CaseFiles.Case concept = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = session.runs();
        EngineStudy study = runs.study();
        EngineBalance balance = study.balance(runs.read(concept.file(), concept.changes()));
        CoolingRuns cooling = new CoolingRuns(session.home());
        JacketSearch.Outcome outcome = search(cooling, balance, Integer.parseInt(evaluations));
        Optional<FeasibilityMap> found = map ? Optional.of(mapped(cooling, balance, p, t)) : Optional.empty();
        CoolingView view = new CoolingView(balance.concept().name(), outcome, cooling.cellCheck(outcome), found);
        List<Path> page = report.write(() -> new ConceptReports(session)
                .of(balance, FeedAnswer.of(() -> study, balance), List.of(view.section()), command(), options()));
        answer(view::json, () -> view.text() + written(page));
        return outcome.feasible() ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }

    private JacketSearch.Outcome search(CoolingRuns cooling, EngineBalance balance, int most) {
        try (ConsoleProgress progress = ConsoleProgress.of(session, "searching", most, false)) {
            return cooling.search(balance, circuit, most, told(progress, "jackets"));
        }
    }

    private FeasibilityMap mapped(CoolingRuns cooling, EngineBalance balance, List<Double> p, List<Double> t) {
        try (ConsoleProgress progress = ConsoleProgress.of(session, "mapping", p.size() * t.size(), false)) {
            return cooling.map(balance.concept(), circuit, p, t, told(progress, "chambers"));
        }
    }

    private static SearchProgress told(ConsoleProgress progress, String what) {
        return (done, all) -> progress.done(done, all, what);
    }

    private static List<Double> sorted(List<Double> values) {
        return values.stream().sorted().toList();
    }
}
