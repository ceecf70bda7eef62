package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.FiguresOption;
import dev.penstock.app.options.ReportOption;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.reports.slide.EngineSlides;
import dev.penstock.reports.slide.SlideFiles;
import dev.penstock.reports.study.ComparisonView;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Outcome;
import dev.penstock.study.Progress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Puts concepts side by side. */
@Command(
        name = "compare",
        description = "Balances several concepts and puts them side by side. One without a solution does not keep the"
                + " others from being shown; the exit code is then 1.")
final class CompareCommand extends BaseCommand {

    @Parameters(
            arity = "1..*",
            paramLabel = "CASE",
            description = "concept files, pages that were made from some, or names of some in cycles/")
    private List<String> files;

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private ReportOption report;

    @Mixin
    private FiguresOption figures;

    CompareCommand(Session session) {
        super(session);
    }

    @Override
    protected String mainRows() {
        return "concepts";
    }

    @Override
    public Integer call() {
        EngineRuns runs = session.runs();
        List<Path> cases = CaseFiles.several(session, files);
        List<Outcome> outcomes;
        try (ConsoleProgress progress = ConsoleProgress.of(session, "balancing", cases.size(), false)) {
            outcomes = runs.balance(cases, changes.map(), progress);
        }
        ComparisonView view =
                new ComparisonView(outcomes.stream().map(this::shown).toList());
        List<Path> pages = report.write(() -> new ConceptReports(session).of(outcomes, changes.map(), Progress.NONE));
        List<Path> written = new ArrayList<>(pages);
        written.addAll(figures.write(() -> slides(outcomes)));
        answer(view::json, () -> view.text() + written(written));
        return outcomes.stream().allMatch(o -> o.balance().isPresent()) ? ExitCode.OK : ExitCode.NO_SOLUTION;
    }

    private Outcome shown(Outcome outcome) {
        return new Outcome(session.pages().shown(outcome.file()), outcome.name(), outcome.balance(), outcome.failure());
    }

    private static List<SlideFiles> slides(List<Outcome> outcomes) {
        List<EngineBalance> engines =
                outcomes.stream().flatMap(o -> o.balance().stream()).toList();
        return engines.isEmpty() ? List.of() : List.of(new SlideFiles("Comparison", EngineSlides.of(engines)));
    }
}
