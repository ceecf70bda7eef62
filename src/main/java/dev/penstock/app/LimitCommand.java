package dev.penstock.app;

import dev.penstock.cycles.Concept;
import dev.penstock.cycles.LimitResult;
import dev.penstock.reports.LimitView;
import dev.penstock.study.EngineRuns;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Finds how far a concept reaches within its hardware limits. */
@Command(
        name = "limit",
        description =
                "Finds the highest chamber pressure that keeps every hardware limit, names the limit that binds, and"
                        + " what each limit is worth.")
final class LimitCommand extends BaseCommand {

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Mixin
    private ChangeOptions changes;

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
        LimitResult result = runs.study().limit(concept);
        List<Path> page = report.write(() -> new ConceptReports(session).of(result, record(found)));
        return answer(() -> LimitView.json(result), () -> LimitView.text(result) + written(page));
    }
}
