package dev.penstock.app;

import dev.penstock.reports.VehicleView;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.VehicleSizing;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Sizes a vehicle with the engines that it names. */
@Command(
        name = "size",
        description =
                "Balances the engines of a vehicle and sizes it: start mass from payload or the reverse, propellant,"
                        + " tanks, dry mass, stage by stage.")
final class SizeCommand extends BaseCommand {

    @Parameters(
            paramLabel = "CASE",
            description = "vehicle file, or concept file with a table [vehicle], or the name of one in cycles/")
    private String file;

    @Mixin
    private ChangeOptions changes;

    SizeCommand(Session session) {
        super(session);
    }

    @Override
    public Integer call() {
        VehicleRuns runs = new VehicleRuns(new EngineRuns(session.home(), session.fluids()));
        VehicleSizing sizing = runs.size(CaseFiles.find(session, List.of(file)).get(0), changes.map(), Progress.NONE);
        return answer(() -> VehicleView.json(sizing), () -> VehicleView.text(sizing));
    }
}
