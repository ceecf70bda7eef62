package dev.penstock.app.study;

import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.Session;
import dev.penstock.numerics.variance.SobolIndices;
import dev.penstock.reports.study.SensitivityView;
import dev.penstock.study.StudyInputs;
import dev.penstock.study.search.PointJournal;
import dev.penstock.study.search.Question;
import dev.penstock.study.search.SensitivityResult;
import dev.penstock.study.search.SensitivityRuns;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Finds which inputs of a concept or a vehicle move its figures. */
@Command(
        name = "sensitivity",
        description = {
            "Finds which inputs of a concept or a vehicle move its figures: first-order and total shares of their variance, with"
                    + " standard errors, each input varied over its range alike.",
            "More than 15 inputs are screened first. Interrupting it keeps what is done."
        })
public final class SensitivityCommand extends SearchCommand {

    @Option(
            names = "--figures",
            paramLabel = "FIGURE",
            split = ",",
            description =
                    "figures to explain, with commas between them, for example engine.isp_vacuum_s,engine.mass_kg")
    private List<String> figures = new ArrayList<>();

    @Option(
            names = "--samples",
            paramLabel = "N",
            defaultValue = "" + StudyInputs.USUAL_SAMPLES,
            description =
                    "points of the design; each costs as many balances as there are inputs, and two (${DEFAULT-VALUE})")
    private int samples;

    /** @param session what the command works with */
    public SensitivityCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        SearchOptions.atLeast("--samples", samples, 2 * SobolIndices.SHIFTS);
        CaseFiles.Case found = found();
        Question question = search().text(figures).sensitivity(search().subject(session, found));
        try (Interruption interruption = new Interruption();
                PointJournal journal = journal(question)) {
            SensitivityResult result;
            int count = SensitivityRuns.evaluations(question.space(), samples);
            try (ConsoleProgress progress = ConsoleProgress.of(session, "sampling", count, false)) {
                result = new SensitivityRuns(journal)
                        .run(question, samples, search().seed(), progress, interruption::requested);
            }
            SensitivityView view = new SensitivityView(result);
            return show(
                    found,
                    question.subject(),
                    "sensitivity",
                    view::json,
                    view::text,
                    view::html,
                    result.shareThatCloses() > 0);
        }
    }

    @Override
    protected Optional<Set<String>> furtherParts() {
        return Optional.of(Set.of(SensitivityView.SCREENING));
    }

    @Override
    protected String mainRows() {
        return "figures";
    }
}
