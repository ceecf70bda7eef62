package dev.penstock.app.study;

import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.Session;
import dev.penstock.reports.study.FrontierView;
import dev.penstock.study.StudyInputs;
import dev.penstock.study.search.FrontierResult;
import dev.penstock.study.search.FrontierRuns;
import dev.penstock.study.search.PointJournal;
import dev.penstock.study.search.Question;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds what one objective of a concept or a vehicle costs of another. */
@Command(
        name = "frontier",
        description =
                "Finds what one objective of a concept or a vehicle costs of another: the points that nothing tried beats"
                        + " in everything, by a genetic algorithm with constraints. Interrupting it keeps the generations that are done.")
public final class FrontierCommand extends SearchCommand {

    @Mixin
    private SearchOptions.Goals goals;

    @Option(
            names = "--population",
            paramLabel = "N",
            defaultValue = "" + StudyInputs.USUAL_POPULATION,
            description = "points of a generation (${DEFAULT-VALUE})")
    private int population;

    @Option(
            names = "--generations",
            paramLabel = "N",
            defaultValue = "" + StudyInputs.USUAL_GENERATIONS,
            description = "generations after the first (${DEFAULT-VALUE})")
    private int generations;

    /** @param session what the command works with */
    public FrontierCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        SearchOptions.atLeast("--population", population, StudyInputs.LEAST_POPULATION);
        SearchOptions.atLeast("--generations", generations, 1);
        CaseFiles.Case found = found();
        Question question = search().text(goals).frontier(search().subject(session, found));
        try (Interruption interruption = new Interruption();
                PointJournal journal = journal(question)) {
            FrontierResult result;
            int count = population * (1 + generations);
            try (ConsoleProgress progress = ConsoleProgress.of(session, "trading", count, false)) {
                result = new FrontierRuns(journal)
                        .run(question, population, generations, search().seed(), progress, interruption::requested);
            }
            FrontierView view = new FrontierView(result);
            return show(
                    found,
                    question.subject(),
                    "frontier",
                    view::json,
                    view::text,
                    view::html,
                    !result.points().isEmpty());
        }
    }

    @Override
    protected String mainRows() {
        return "points";
    }
}
