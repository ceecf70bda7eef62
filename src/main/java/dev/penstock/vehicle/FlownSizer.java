package dev.penstock.vehicle;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.NotConverged;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.ascent.FlightSegment;
import dev.penstock.vehicle.ascent.Thrusters;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.RecoveryHardware;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.DeltaVBudget.Kind;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.PropellantLoad;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sizes a vehicle and flies it, in turns, until the losses it was sized on are those of its flight. What is left in the
 * stages at insertion then equals the manoeuvres and the reserve of the mission. Not thread-safe.
 */
public final class FlownSizer {

    /** Speed by which what is left may differ from what the mission keeps (m/s). */
    private static final double TOLERANCE = 0.5;

    private static final int MOST_ROUNDS = 15;
    private static final int KEEP_ENGINES_AFTER = 3;
    private static final String FLOWN = "flown";

    private final VehicleSizer sizer = new VehicleSizer();
    private final Atmosphere atmosphere;
    private final AscentOptimizer optimizer;

    /**
     * @param atmosphere the air
     */
    public FlownSizer(Atmosphere atmosphere) {
        this.atmosphere = atmosphere;
        this.optimizer = new AscentOptimizer(atmosphere);
    }

    /**
     * @param plan what is asked for, with an orbit by its height
     * @param source gives the engines that the plan names
     * @param progress told how far it has come
     * @return the vehicle and its flight
     * @throws InvalidInput if the mission names no orbit by its height
     * @throws NotConverged if sizing and flight do not settle
     * @throws dev.penstock.errors.LimitReached if no vehicle closes or reaches the orbit
     */
    public FlownSizing size(VehiclePlan plan, EngineSource source, FlightProgress progress) {
        AscentPlan ascent = plan.ascent()
                .orElseThrow(() -> new InvalidInput(
                        plan.name(), "mission.orbit_altitude", "missing", "a flight needs it, for example \"200 km\""));
        VehiclePlan current = plan.withNotes(List.of());
        OptionalDouble tilt = OptionalDouble.empty();
        double miss = Double.POSITIVE_INFINITY;
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            double from = 1 - Math.pow(0.6, round - 1);
            double to = 1 - Math.pow(0.6, round);
            VehicleSizing sizing = sizer.size(current, source);
            AscentResult flight = optimizer.estimate(
                    vehicle(sizing, ascent),
                    ascent.mission(),
                    tilt,
                    (fraction, what) -> progress.at(from + (to - from) * fraction, what));
            tilt = OptionalDouble.of(flight.tilt());
            miss = flight.margin() - current.mission().afterAscent();
            if (Math.abs(miss) < TOLERANCE) {
                AscentResult shown = optimizer.flyWithTilt(vehicle(sizing, ascent), ascent.mission(), flight.tilt());
                progress.at(1, "vehicle and flight agree");
                return new FlownSizing(sizing, shown, StageReturn.of(sizing, shown, atmosphere), round);
            }
            current = current.withMission(current.mission().withAscent(terms(flight)));
            current = withReturn(current, StageReturn.of(sizing, flight, atmosphere));
            if (round >= KEEP_ENGINES_AFTER) {
                current = withEnginesKept(current, sizing);
            }
        }
        throw new NotConverged(
                "vehicle sized on its own flight",
                MOST_ROUNDS,
                Math.abs(miss),
                "speed left over, in m/s, still changes");
    }

    /**
     * A recovered first stage keeps what its way back takes, where nothing else is stated, and is protected against the heat
     * it met where it is built up line by line.
     */
    private static VehiclePlan withReturn(VehiclePlan plan, Optional<StageReturn> way) {
        if (way.isEmpty()) {
            return plan;
        }
        StageReturn back = way.get();
        StagePlan first = plan.stages().get(0);
        DryMassModel dryMass = first.dryMass();
        if (dryMass instanceof BuiltUpDryMass builtUp) {
            double heatLoad = back.entry().heatLoad();
            Optional<RecoveryHardware> hardware = builtUp.design().recovery().map(h -> h.withHeatLoad(heatLoad));
            dryMass = new BuiltUpDryMass(builtUp.design().withRecovery(hardware));
        }
        List<StagePlan> stages = new ArrayList<>(plan.stages());
        stages.set(
                0, first.withRecovery(dryMass, first.recovery().flown(back.boostbackDeltaV(), back.landingDeltaV())));
        return plan.withStages(stages);
    }

    /** A stage whose engine count flips from round to round keeps the larger number. */
    private static VehiclePlan withEnginesKept(VehiclePlan plan, VehicleSizing sizing) {
        List<StagePlan> stages = new ArrayList<>();
        for (int i = 0; i < plan.stages().size(); i++) {
            StagePlan stage = plan.stages().get(i);
            int kept = Math.max(stage.engines().least(), sizing.stages().get(i).engines());
            stages.add(stage.withEngines(stage.engines().atLeast(kept)));
        }
        return plan.withStages(stages);
    }

    private static DeltaVBudget.Term flown(Kind kind, String name, double value) {
        return new DeltaVBudget.Term(
                kind, name, value, FLOWN, Optional.of(AscentOptimizer.CARD), List.of("ascent.", "mission."));
    }

    private static List<DeltaVBudget.Term> terms(AscentResult flight) {
        return List.of(
                flown(Kind.SPEED, "orbital speed", flight.inertialSpeed()),
                flown(Kind.CREDIT, "speed of the rotating air", -flight.rotationCredit()),
                flown(Kind.LOSS, "gravity loss", flight.gravityLoss()),
                flown(Kind.LOSS, "drag loss", flight.dragLoss()),
                flown(Kind.LOSS, "steering loss", flight.steeringLoss()),
                flown(Kind.LOSS, "back-pressure loss", flight.backPressureLoss()));
    }

    /**
     * @param sizing a sized vehicle
     * @param ascent how it flies
     * @return the vehicle as its flight sees it
     */
    public static AscentVehicle vehicle(VehicleSizing sizing, AscentPlan ascent) {
        List<FlightSegment> segments = new ArrayList<>();
        double width = 0;
        for (int i = 0; i < sizing.stages().size(); i++) {
            StageSizing stage = sizing.stages().get(i);
            boolean last = i == sizing.stages().size() - 1;
            width = Math.max(width, stage.contents().diameter());
            segments.addAll(segments(stage, i == 0 ? 0 : ascent.stageCoast(), last));
        }
        double area = Math.PI / 4 * width * width;
        Optional<BoosterSizing> boosters = sizing.stages().get(0).boosters();
        double boosterArea = boosters.map(
                        b -> b.count() * Math.PI / 4 * Math.pow(b.contents().diameter(), 2))
                .orElse(0.0);
        return new AscentVehicle(
                sizing.plan().name(), sizing.startMass(), segments, area + boosterArea, ascent.dragTable());
    }

    private static List<FlightSegment> segments(StageSizing stage, double coast, boolean last) {
        PropellantLoad load = stage.propellant();
        double spent = load.startup() + load.boilOff();
        double dropped = last ? 0 : stage.dryMass().total() + load.residual() + load.recovery();
        Thrusters own = Thrusters.of(stage.engine(), stage.engines());
        if (stage.boosters().isEmpty()) {
            return List.of(new FlightSegment(stage.name(), own, coast, spent, load.burned(), dropped));
        }
        BoosterSizing boosters = stage.boosters().get();
        double together = own.massFlow() * boosters.burnTime();
        Thrusters all = new Thrusters(List.of(
                new Thrusters.Group(stage.engine(), stage.engines()),
                new Thrusters.Group(
                        boosters.engine(), boosters.count() * boosters.plan().engines())));
        return List.of(
                new FlightSegment(
                        stage.name() + " and boosters",
                        all,
                        coast,
                        spent + boosters.spentBefore(),
                        boosters.burned() + together,
                        boosters.droppedMass()),
                new FlightSegment(stage.name(), own, 0, 0, Math.max(1e-3, load.burned() - together), dropped));
    }
}
