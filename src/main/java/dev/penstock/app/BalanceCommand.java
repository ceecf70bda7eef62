package dev.penstock.app;

import dev.penstock.cycles.Concept;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.reports.BalanceJson;
import dev.penstock.reports.BalanceText;
import dev.penstock.study.EngineRuns;
import java.nio.file.Path;
import java.util.List;
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

    BalanceCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        EngineRuns runs = new EngineRuns(session.home(), session.fluids());
        Concept concept = runs.read(CaseFiles.find(session, List.of(file)).get(0), changes.map());
        EngineBalance balance = runs.study().balance(concept);
        Optional<Path> page = report.folder().map(folder -> new ConceptReports(session).write(folder, balance));
        return answer(
                () -> BalanceJson.of(balance),
                () -> BalanceText.of(balance) + written(page.stream().toList()));
    }
}
