package dev.penstock.vehicle;

import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.FlightSegment;
import dev.penstock.vehicle.ascent.Thrusters;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.PropellantLoad;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A sized vehicle as its flight sees it: parts of the flight, cross section, fairing. */
public final class VehicleInFlight {

    private VehicleInFlight() {}

    /**
     * @param sizing a sized vehicle
     * @param ascent how it flies
     * @return the vehicle as its flight sees it
     */
    public static AscentVehicle of(VehicleSizing sizing, AscentPlan ascent) {
        List<FlightSegment> segments = new ArrayList<>();
        AscentVehicle.Fairing fairing = AscentVehicle.Fairing.NONE;
        double width = 0;
        for (int i = 0; i < sizing.stages().size(); i++) {
            StageSizing stage = sizing.stages().get(i);
            boolean last = i == sizing.stages().size() - 1;
            width = Math.max(width, stage.contents().diameter());
            int from = segments.size();
            double covered = sizing.plan().stages().get(i).dryMass().fairing();
            boolean drops = covered > 0 && fairing.mass() == 0;
            segments.addAll(segments(stage, i == 0 ? 0 : ascent.stageCoast(), last, drops ? covered : 0));
            if (drops) {
                fairing = new AscentVehicle.Fairing(covered, from, segments.size() - 1);
            }
        }
        double area = Math.PI / 4 * width * width;
        Optional<BoosterSizing> boosters = sizing.stages().get(0).boosters();
        double boosterArea = boosters.map(b -> b.count() * Math.PI / 4 * Math.pow(b.diameter(), 2))
                .orElse(0.0);
        return new AscentVehicle(
                sizing.plan().name(), sizing.startMass(), segments, area + boosterArea, ascent.dragTable(), fairing);
    }

    private static List<FlightSegment> segments(StageSizing stage, double coast, boolean last, double fairing) {
        PropellantLoad load = stage.propellant();
        double spent = load.startup() + load.boilOff();
        double dropped = last ? 0 : stage.dryMass().total() - fairing + load.residual() + load.recovery();
        Thrusters own = Thrusters.of(stage.engine(), stage.engines());
        if (stage.boosters().isEmpty()) {
            return List.of(new FlightSegment(stage.name(), own, coast, spent, load.burned(), dropped));
        }
        BoosterSizing boosters = stage.boosters().get();
        double together = own.massFlow() * boosters.burnTime();
        return List.of(
                new FlightSegment(
                        stage.name() + " and boosters",
                        boosters.with(own),
                        coast,
                        spent + boosters.spentBefore(),
                        boosters.burned() + together,
                        boosters.droppedMass()),
                new FlightSegment(stage.name(), own, 0, 0, Math.max(1e-3, load.burned() - together), dropped));
    }
}
