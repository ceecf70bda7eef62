package dev.penstock.app.study;

import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.ConsoleProgress;
import dev.penstock.app.console.Interruption;
import dev.penstock.app.console.Session;
import dev.penstock.errors.InvalidInput;
import dev.penstock.numerics.variance.SobolIndices;
import dev.penstock.reports.study.SensitivityView;
import dev.penstock.study.search.SensitivityResult;
import dev.penstock.study.search.SensitivityRuns;
import dev.penstock.study.space.StudyFigure;
import java.util.ArrayList;
import java.util.List;
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
            defaultValue = "256",
            description = "points of the design; each costs as many balances as there are inputs, and two (256)")
    private int samples;

    /** @param session what the command works with */
    public SensitivityCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        SearchOptions.atLeast("--samples", samples, 2 * SobolIndices.SHIFTS);
        CaseFiles.Case found = found();
        SearchOptions.Asked asked = search().asked(session, found);
        if (figures.isEmpty()) {
            throw new InvalidInput(
                    "",
                    "--figures",
                    "missing",
                    "write figures to explain, for example engine.isp_vacuum_s,engine.mass_kg");
        }
        List<StudyFigure> explained = asked.paths().figures("--figures", figures);
        try (Interruption interruption = new Interruption()) {
            SensitivityResult result;
            int count = SobolIndices.evaluations(asked.space().size(), samples);
            try (ConsoleProgress progress = ConsoleProgress.of(session, "sampling", count, false)) {
                result = new SensitivityRuns()
                        .run(
                                asked.subject(),
                                asked.space(),
                                explained,
                                samples,
                                search().seed(),
                                progress,
                                interruption::requested);
            }
            SensitivityView view = new SensitivityView(result);
            return show(
                    found,
                    asked.subject(),
                    "sensitivity",
                    view::json,
                    view::text,
                    view::html,
                    result.shareThatCloses() > 0);
        }
    }

    @Override
    protected String mainRows() {
        return "figures";
    }
}
