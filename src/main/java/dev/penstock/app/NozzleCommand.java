package dev.penstock.app;

import dev.penstock.app.console.BaseCommand;
import dev.penstock.app.console.CaseFiles;
import dev.penstock.app.console.Session;
import dev.penstock.app.options.ChangeOptions;
import dev.penstock.app.options.OptionReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.reports.engine.NozzleView;
import dev.penstock.study.EngineRuns;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows the nozzle of a balanced engine. */
@Command(
        name = "nozzle",
        description = "Balances a concept and shows its nozzle: contour, thrust and specific impulse against altitude,"
                + " also of an ideal plug, averaged over an ascent, and what throttling costs.")
final class NozzleCommand extends BaseCommand {

    private static final Range TIMES = Range.of(1, 1e5);

    @Parameters(paramLabel = "CASE", description = "concept file, or the name of one in cycles/")
    private String file;

    @Option(
            names = "--burn-time",
            paramLabel = "TIME",
            description = "of the ascent to average over; 150 s unless given")
    private String burnTime = "150 s";

    @Option(
            names = "--pressure-decay",
            paramLabel = "TIME",
            description = "in which the ambient pressure falls to 1/e on the ascent; 40 s unless given")
    private String pressureDecay = "40 s";

    @Mixin
    private ChangeOptions changes;

    NozzleCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        OptionReader options = new OptionReader();
        double burn = options.quantity("--burn-time", Optional.of(burnTime), Dimension.TIME, TIMES);
        double decay = options.quantity("--pressure-decay", Optional.of(pressureDecay), Dimension.TIME, TIMES);
        options.finish();
        CaseFiles.Case found = CaseFiles.one(session, file, changes.map());
        EngineRuns runs = session.runs();
        EngineBalance balance = runs.study().balance(runs.read(found.file(), found.changes()));
        NozzleView view = new NozzleView(balance, burn, decay);
        return answer(view::json, view::text, view::csv);
    }
}
