package dev.penstock.app.study;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConceptReports;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.ReportOption;
import dev.penstock.app.console.Session;
import dev.penstock.reports.study.FrontierView;
import dev.penstock.study.search.FrontierResult;
import dev.penstock.study.search.FrontierRuns;
import dev.penstock.study.search.Question;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds what one objective of a concept or a vehicle costs of another. */
@Command(
        name = "frontier",
        description =
                "Finds what one objective of a concept or a vehicle costs of another: the points that nothing tried beats"
                        + " in everything, by a genetic algorithm with constraints. Interrupting it keeps the generations that are done.")
public final class FrontierCommand extends BaseCommand {

    private static final int SMALLEST = 8;

    @Parameters(paramLabel = "CASE", description = "concept or vehicle file, or the name of one in cycles/")
    private String file;

    @Mixin
    private SearchOptions search;

    @Mixin
    private SearchOptions.Goals goals;

    @Option(names = "--population", paramLabel = "N", defaultValue = "40", description = "points of a generation (40)")
    private int population;

    @Option(
            names = "--generations",
            paramLabel = "N",
            defaultValue = "25",
            description = "generations after the first (25)")
    private int generations;

    @Mixin
    private ReportOption report;

    /** @param session what the command works with */
    public FrontierCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        SearchOptions.atLeast("--population", population, SMALLEST);
        SearchOptions.atLeast("--generations", generations, 1);
        CaseFiles.Case found = search.found(session, file);
        Question question = search.question(session, found, goals, 2, 3);
        try (Interruption interruption = new Interruption()) {
            FrontierResult result;
            int count = population * (1 + generations);
            try (ConsoleProgress progress = ConsoleProgress.of(session, "trading", count, false)) {
                result = new FrontierRuns()
                        .run(question, population, generations, search.seed(), progress, interruption::requested);
            }
            FrontierView view = new FrontierView(result);
            List<Path> pages = report.write(() -> Map.of(
                    ConceptReports.slug(question.subject().name()) + "-frontier.html",
                    record(found).addTo(view.html(new ConceptReports(session).software()))));
            answer(view::json, () -> view.text() + written(pages));
            return result.points().isEmpty() ? ExitCode.NO_SOLUTION : ExitCode.OK;
        }
    }

    @Override
    protected String mainRows() {
        return "points";
    }
}
