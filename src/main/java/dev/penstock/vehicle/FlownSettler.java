package dev.penstock.vehicle;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.NotConverged;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.DeltaVBudget.Kind;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sizes and flies in turns until what is left in the stages at insertion equals the manoeuvres and the reserve of the mission. A
 * flight that misses its orbit, or jumps to another path there, is steered anew. Not thread-safe.
 */
final class FlownSettler {

    /** Speed by which what is left may differ from what the mission keeps (m/s). */
    private static final double TOLERANCE = 0.5;

    private static final int MOST_ROUNDS = 30;
    private static final int MOST_STEERED = 6;
    /** What is left over (m/s) by which a flight counts as another one. */
    private static final double JUMP = 60;
    /** Change of what is left over with the delta-v sized for (-) below which the last two rounds tell nothing. */
    private static final double LEAST_SLOPE = 0.3;

    private static final double MOST_SLOPE = 2;
    /** Largest change of the delta-v (m/s) from round to round. */
    private static final double LARGEST_STEP = 150;

    /** Boost-back kept (m/s) within which it counts as what is needed: the start mass of such vehicles moves by 0.1 % for each. */
    private static final double FOLLOWED = 1;

    /** What is left over (m/s) from which delta-v and boost-back are matched anew, both at once. */
    private static final double REMATCHED = 5;

    private static final String FLOWN = "flown";

    private final FlownSearch search;
    private final EngineSource source;
    private final AscentOptimizer optimizer;
    private final Atmosphere atmosphere;
    private final VehicleSizer sizer = new VehicleSizer();
    private double lastKept = Double.NaN;
    private double lastNeeded = Double.NaN;

    FlownSettler(FlownSearch search, EngineSource source, AscentOptimizer optimizer, Atmosphere atmosphere) {
        this.search = search;
        this.source = source;
        this.optimizer = optimizer;
        this.atmosphere = atmosphere;
    }

    /** Takes what a flight tells of fairing and way back into the plan of the search. */
    void learn(FlownSearch.Found found) {
        if (!found.flies()) {
            return;
        }
        FlownDesign design = found.design();
        lastKept = Double.NaN;
        try {
            VehicleSizing sizing = sizer.size(design.plan(search.plan()), source);
            search.with(learned(sizing, flown(sizing, design)));
        } catch (NotConverged laterPerhaps) {
            // what it would have told is told again when vehicle and flight settle
        }
    }

    /**
     * @param chosen a choice that flies
     * @param progress told of the end
     * @return vehicle and flight in agreement
     * @throws NotConverged if they do not get there
     */
    FlownSizing settled(FlownSearch.Found chosen, FlightProgress progress) {
        try {
            return agreed(chosen.design(), progress);
        } catch (NotConverged again) {
            FlownSearch.Found anew = search.grown(search.scanned(chosen.design()));
            FlownSearch.Found better = search.grown(search.improved(anew, 0.04, 2e-3, 120));
            return agreed(better.design(), progress);
        }
    }

    private FlownSizing agreed(FlownDesign chosen, FlightProgress progress) {
        FlownDesign design = kept(search.matched(chosen));
        double miss = Double.POSITIVE_INFINITY;
        double lastMiss = Double.NaN;
        double lastDeltaV = Double.NaN;
        int steered = 0;
        Optional<List<DeltaVBudget.Term>> terms = Optional.empty();
        lastKept = Double.NaN;
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            DeltaVBudget base = search.plan().mission().entering(design.entry(search.ascent()));
            Optional<DeltaVBudget> budget = terms.map(base::withAscent);
            if (budget.isPresent()) {
                design = design.sizedFor(budget.get().total());
            }
            VehiclePlan asked = design.plan(search.plan());
            VehicleSizing sizing = sizer.size(budget.map(asked::withMission).orElse(asked), source);
            Optional<AscentResult> tried = tried(sizing, design);
            double left = tried.map(AscentResult::margin).orElse(Double.NaN) - base.afterAscent();
            if (!(Math.abs(left) < JUMP) && steered < MOST_STEERED) {
                steered++;
                design = kept(search.matched(search.steered(design).design()));
                terms = Optional.empty();
                lastMiss = Double.NaN;
                lastKept = Double.NaN;
                continue;
            }
            if (tried.isEmpty()) {
                break;
            }
            AscentResult flight = tried.get();
            miss = left;
            search.with(learned(sizing, flight));
            if (Math.abs(miss) < TOLERANCE && budget.isPresent()) {
                AscentResult shown = inDetail(sizing, design, flight);
                progress.at(1, "vehicle and flight agree");
                return new FlownSizing(sizing, shown, StageReturn.of(sizing, shown, atmosphere), round);
            }
            double slope = (miss - lastMiss) / (design.deltaV() - lastDeltaV);
            lastMiss = miss;
            lastDeltaV = design.deltaV();
            if (Math.abs(miss) < TOLERANCE) {
                terms = Optional.of(terms(sizing, flight));
            } else {
                terms = Optional.empty();
                Recovery back = search.plan().stages().get(0).recovery();
                if (Math.abs(miss) > REMATCHED && search.turnsBack()) {
                    design = kept(search.matched(design.turningBack(OptionalDouble.of(back.boostback()))));
                    lastMiss = Double.NaN;
                    lastKept = Double.NaN;
                    continue;
                }
                double step = miss / (slope > LEAST_SLOPE ? Math.min(MOST_SLOPE, slope) : 1);
                design = design.sizedFor(design.deltaV() - Math.max(-LARGEST_STEP, Math.min(LARGEST_STEP, step)));
            }
        }
        throw new NotConverged(
                "vehicle sized on its own flight",
                MOST_ROUNDS,
                Math.abs(miss),
                "speed left over, in m/s, still changes");
    }

    /** What a design keeps to turn back goes into the plan, where flights change it further. */
    private FlownDesign kept(FlownDesign design) {
        if (design.turnBack().isEmpty()) {
            return design;
        }
        StagePlan first = search.plan().stages().get(0);
        Recovery now = first.recovery();
        List<StagePlan> stages = new ArrayList<>(search.plan().stages());
        stages.set(
                0,
                first.withRecovery(first.dryMass(), now.flown(design.turnBack().getAsDouble(), now.landing())));
        search.with(search.plan().withStages(stages));
        return design.turningBack(OptionalDouble.empty());
    }

    private AscentResult flown(VehicleSizing sizing, FlownDesign design) {
        design.aim().ifPresent(optimizer::aimFrom);
        return optimizer.estimate(
                VehicleInFlight.of(sizing, search.ascent()), design.mission(search.ascent()), design.steering());
    }

    private Optional<AscentResult> tried(VehicleSizing sizing, FlownDesign design) {
        try {
            return Optional.of(flown(sizing, design));
        } catch (NotConverged missed) {
            return Optional.empty();
        }
    }

    private VehiclePlan learned(VehicleSizing sizing, AscentResult flight) {
        return withFairing(withReturn(search.plan(), StageReturn.of(sizing, flight, atmosphere)), flight);
    }

    /** A flight once more in small steps; as it is where the smaller steps do not end in the orbit. */
    private AscentResult inDetail(VehicleSizing sizing, FlownDesign design, AscentResult flight) {
        try {
            return optimizer.flyWith(
                    VehicleInFlight.of(sizing, search.ascent()), design.mission(search.ascent()), design.steering());
        } catch (NotConverged missed) {
            return flight;
        }
    }

    /** The fairing goes overboard where the flight says. */
    private static VehiclePlan withFairing(VehiclePlan plan, AscentResult flight) {
        List<StagePlan> stages = new ArrayList<>(plan.stages());
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).dryMass().fairing() > 0) {
                double after = flight.fairingDrop()
                        .map(drop -> Math.max(0, drop.idealDeltaV()))
                        .orElse(1e5);
                stages.set(i, stages.get(i).withFairingAfter(after));
                return plan.withStages(stages);
            }
        }
        return plan;
    }

    /**
     * A recovered first stage keeps what its way back takes, where nothing else is stated, and is protected against the heat
     * it met where it is built up line by line.
     */
    private VehiclePlan withReturn(VehiclePlan plan, Optional<StageReturn> way) {
        if (way.isEmpty()) {
            return plan;
        }
        StageReturn back = way.get();
        StagePlan first = plan.stages().get(0);
        double heatLoad = back.entry().heatLoad();
        DryMassModel dryMass = first.dryMass().recovering(hardware -> hardware.map(h -> h.withHeatLoad(heatLoad)));
        List<StagePlan> stages = new ArrayList<>(plan.stages());
        Recovery kept = first.recovery();
        Recovery next = kept.flown(
                follow(kept.boostback(), back.boostbackDeltaV()),
                near(kept.landing(), back.landingDeltaV()) ? kept.landing() : back.landingDeltaV());
        stages.set(0, first.withRecovery(dryMass, next));
        return plan.withStages(stages);
    }

    /** Whether what is kept (m/s) is what is needed, as near as a warning asks. */
    private static boolean near(double kept, double needed) {
        return needed <= StageReturn.SLACK * kept && kept <= StageReturn.SLACK * needed;
    }

    /**
     * What to keep next for turning back (m/s): with the steering held, what that takes can grow by more than what is kept for it, so
     * that following it runs away; a secant does not.
     */
    private double follow(double kept, double needed) {
        if (Math.abs(needed - kept) < FOLLOWED) {
            return kept;
        }
        double slope = (needed - lastNeeded) / (kept - lastKept);
        lastKept = kept;
        lastNeeded = needed;
        double step = needed - kept;
        if (Double.isFinite(slope) && Math.abs(1 - slope) > LEAST_SLOPE) {
            step /= 1 - slope;
            step = Math.max(-LARGEST_STEP, Math.min(LARGEST_STEP, step));
        }
        return Math.max(0, kept + step);
    }

    private static DeltaVBudget.Term flown(Kind kind, String name, double value) {
        return new DeltaVBudget.Term(
                kind, name, value, FLOWN, Optional.of(AscentOptimizer.CARD), List.of("ascent.", "mission."));
    }

    private static List<DeltaVBudget.Term> terms(VehicleSizing sizing, AscentResult flight) {
        List<DeltaVBudget.Term> terms = new ArrayList<>(terms(flight));
        boolean solids = flight.vehicle().segments().stream()
                .anyMatch(s -> s.thrusters().solids().isPresent());
        if (solids) {
            // sized as if the engines beside solid motors ran at full thrust; throttled, they burn later what they
            // spare
            double moved = sizing.deltaV() - flight.idealDeltaV() - flight.margin();
            terms.add(flown(Kind.LOSS, "throttling beside solid boosters", moved));
        }
        return terms;
    }

    private static List<DeltaVBudget.Term> terms(AscentResult flight) {
        return List.of(
                flown(Kind.SPEED, "orbital speed", flight.inertialSpeed()),
                flown(Kind.CREDIT, "what the turning air adds", -flight.rotationCredit()),
                flown(Kind.LOSS, "gravity loss", flight.gravityLoss()),
                flown(Kind.DRAG_LOSS, "drag loss", flight.dragLoss()),
                flown(Kind.LOSS, "steering loss", flight.steeringLoss()),
                flown(Kind.LOSS, "back-pressure loss", flight.backPressureLoss()));
    }
}
