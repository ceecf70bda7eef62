package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.DiagramOption;
import dev.penstock.app.options.FiguresOption;
import dev.penstock.app.options.ReportOption;
import dev.penstock.app.options.SamplesOption;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.reports.concept.FeedAnswer;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.study.UncertaintyView;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.UncertaintyResult;
import dev.penstock.study.UncertaintyRuns;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Closes an engine at its chamber pressure. */
@Command(
        name = "balance",
        description = "Closes a concept at its chamber pressure: flows, pressures, powers, sizes, specific impulse,"
                + " margins to every limit.")
final class BalanceCommand extends BaseCommand {

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Mixin
    private ChangeOptions changes;

    @Mixin
    private ReportOption report;

    @Mixin
    private FiguresOption figures;

    @Mixin
    private SamplesOption samples;

    @Mixin
    private DiagramOption diagram;

    BalanceCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        int count = samples.count();
        diagram.check();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = session.runs();
        Concept concept = runs.read(found.file(), found.changes());
        EngineStudy study = runs.study();
        EngineBalance balance = study.balance(concept);
        FeedAnswer feed = FeedAnswer.of(() -> study, balance);
        Optional<UncertaintyResult> uncertainty =
                count == 0 ? Optional.empty() : Optional.of(sample(runs, concept, count));
        List<PageSection> further =
                uncertainty.map(UncertaintyView::section).stream().toList();
        List<Path> page =
                report.write(() -> new ConceptReports(session).of(balance, feed, further, command(), options()));
        List<Path> written = new ArrayList<>(page);
        written.addAll(figures.write(() -> List.of(new ConceptReports(session).slides(balance))));
        written.addAll(diagram.write(balance));
        return answer(
                () -> {
                    Map<String, Object> map = FigureJson.of(EngineFigures.ALL, balance);
                    feed.addTo(map);
                    uncertainty.ifPresent(u -> map.put("uncertainty", UncertaintyView.json(u)));
                    return map;
                },
                () -> BalanceText.of(balance)
                        + feed.text()
                        + uncertainty
                                .map(u -> System.lineSeparator() + UncertaintyView.text(u))
                                .orElse("")
                        + written(written));
    }

    private UncertaintyResult sample(EngineRuns runs, Concept concept, int count) {
        try (ConsoleProgress progress = ConsoleProgress.of(session, "sampling", count, false)) {
            return new UncertaintyRuns(runs).run(concept, count, progress);
        }
    }
}
