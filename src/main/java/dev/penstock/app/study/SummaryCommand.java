package dev.penstock.app.study;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.ExitCode;
import dev.penstock.app.console.Session;
import dev.penstock.reports.study.SampleView;
import dev.penstock.study.store.StoredRows;
import dev.penstock.study.store.StoredRows.Objective;
import dev.penstock.study.store.StudySummary;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Asks the rows of a study of many points. */
@Command(
        name = "summary",
        description =
                "Tells what the rows of a sample say together: percentiles, shares, reasons of failure. The files are"
                        + " asked where they are; a study that still runs can be asked too.")
public final class SummaryCommand extends BaseCommand {

    @Parameters(paramLabel = "OUT", description = "folder that a sample has written")
    private Path folder;

    @Option(
            names = "--minimise",
            paramLabel = "FIGURE",
            description =
                    "with another of these: show the rows that no other beats in both figures and that keep all limits")
    private List<String> least = new ArrayList<>();

    @Option(names = "--maximise", paramLabel = "FIGURE", description = "the same for a figure that should be large")
    private List<String> most = new ArrayList<>();

    /** @param session what the command works with */
    public SummaryCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        try (StoredRows rows = StoredRows.open(folder)) {
            if (csv() && rows().isEmpty()) {
                SampleView.csv(rows, session.out());
                session.out().flush();
                return ExitCode.OK;
            }
            List<Objective> objectives = new ArrayList<>();
            least.forEach(figure -> objectives.add(new Objective(figure, true)));
            most.forEach(figure -> objectives.add(new Objective(figure, false)));
            StudySummary summary = rows.summary(objectives);
            return answer(() -> SampleView.document(summary), () -> SampleView.text(summary));
        }
    }
}
