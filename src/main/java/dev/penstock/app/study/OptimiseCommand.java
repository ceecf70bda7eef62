package dev.penstock.app.study;

import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.Session;
import dev.penstock.reports.study.OptimumView;
import dev.penstock.study.StudyInputs;
import dev.penstock.study.search.OptimumResult;
import dev.penstock.study.search.OptimumRuns;
import dev.penstock.study.search.PointJournal;
import dev.penstock.study.search.Question;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Searches the best point of a concept or a vehicle. */
@Command(
        name = "optimise",
        description = {
            "Searches the inputs of a concept or a vehicle for the least or most of a figure under constraints: several starts"
                    + " of an evolution strategy, finished by quadratic programming where it is smooth.",
            "What it finds is balanced again and its constraints are checked. Interrupting it keeps the best so far."
        })
public final class OptimiseCommand extends SearchCommand {

    @Mixin
    private SearchOptions.Goals goals;

    @Option(
            names = "--starts",
            paramLabel = "N",
            defaultValue = "" + StudyInputs.USUAL_STARTS,
            description = "number of starts (${DEFAULT-VALUE})")
    private int starts;

    @Option(
            names = "--evaluations",
            paramLabel = "N",
            defaultValue = "0",
            description = "points that each start tries at most, the finish aside (120 for each input, 400 at least)")
    private int evaluations;

    /** @param session what the command works with */
    public OptimiseCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        SearchOptions.atLeast("--starts", starts, 1);
        CaseFiles.Case found = found();
        Question question = search().text(goals).optimise(search().subject(session, found));
        int most = evaluations > 0
                ? SearchOptions.atLeast("--evaluations", evaluations, StudyInputs.LEAST_EVALUATIONS)
                : OptimumRuns.usualEvaluations(question.space());
        try (Interruption interruption = new Interruption();
                PointJournal journal = journal(question)) {
            OptimumResult result;
            try (ConsoleProgress progress = ConsoleProgress.of(session, "optimising", starts * most, false)) {
                result = new OptimumRuns(journal)
                        .run(question, starts, most, search().seed(), progress, interruption::requested);
            }
            OptimumView view = new OptimumView(result);
            return show(found, question.subject(), "optimum", view::json, view::text, view::html, result.feasible());
        }
    }

    @Override
    protected String mainRows() {
        return "starts";
    }
}
