package dev.penstock.vehicle;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.Warning;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.ascent.Steering;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.RecoveryHardware;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.DeltaVBudget.Kind;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Sizes a vehicle on its own flight: what the plan leaves open (split, numbers of engines, insertion height) and the steering
 * are chosen together so that the start mass is least, or the payload most; then vehicle and flight take turns until what is
 * left in the stages at insertion equals the manoeuvres and the reserve of the mission. Not thread-safe.
 */
public final class FlownSizer {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.flown-sizing",
            "Vehicle chosen on its flight",
            "least start mass over split, engines, insertion height and steering, each vehicle with what its flight takes",
            "two-dimensional ascents to an orbit; insertion level",
            "start mass within some per cent of the best, by judgement; the best is not proven",
            List.of("common practice, no source"));

    /** Speed by which what is left may differ from what the mission keeps (m/s). */
    private static final double TOLERANCE = 0.5;

    private static final int MOST_ROUNDS = 30;
    private static final int MOST_STARTS = 4;

    /** Change of the delta-v (m/s) at which a first vehicle is near the one that its flight asks for. */
    private static final double NEAR = 150;

    /** Change of what is left over with the delta-v sized for (-) below which the last two rounds tell nothing. */
    private static final double LEAST_SLOPE = 0.3;

    private static final double MOST_SLOPE = 2;

    /** Largest change of the delta-v (m/s) from round to round. */
    private static final double LARGEST_STEP = 150;

    /** Improvement of the cost (-) for which another number of engines is taken. */
    private static final double WORTH = 1e-6;

    private static final int MOST_COUNTS = 14;
    private static final String FLOWN = "flown";

    private final Atmosphere atmosphere;

    /**
     * @param atmosphere the air
     */
    public FlownSizer(Atmosphere atmosphere) {
        this.atmosphere = atmosphere;
    }

    /**
     * @param plan what is asked for, with an orbit by its height
     * @param source gives the engines that the plan names
     * @param progress told how far it has come
     * @return the vehicle and its flight
     * @throws InvalidInput if the mission names no orbit by its height
     * @throws NotConverged if sizing and flight do not settle
     * @throws LimitReached if no vehicle closes or reaches the orbit; the message names what to change
     */
    public FlownSizing size(VehiclePlan plan, EngineSource source, FlightProgress progress) {
        AscentPlan ascent = plan.ascent()
                .orElseThrow(() -> new InvalidInput(
                        plan.name(), "mission.orbit_altitude", "missing", "a flight needs it, for example \"200 km\""));
        AscentOptimizer optimizer = new AscentOptimizer(atmosphere);
        FlownSearch search = new FlownSearch(
                plan.withNotes(List.of()), source, optimizer, lowestInsertion(ascent.mission(), atmosphere));
        FlownSearch.Found found = start(search, plan, source);
        progress.at(0.2, "a first flight found");
        found = search.acrossSplits(found, new double[] {0.25, 0.34, 0.43, 0.52}, 60);
        found = search.grown(search.improved(found, 0.05, 3e-3, 100));
        learn(search, found, source, optimizer);
        progress.at(0.4, "split and steering chosen");
        found = search.grown(withEngines(search, found, progress));
        learn(search, found, source, optimizer);
        double first = found.design().shares().get(0);
        found = search.acrossSplits(
                found, new double[] {first - 0.08, first - 0.04, first - 0.02, first + 0.02, first + 0.04, first + 0.08}, 50);
        found = search.grown(search.improved(found, 0.02, 1e-3, 100));
        progress.at(0.9, "engines chosen");
        if (!found.flies()) {
            throw new LimitReached("ascent.orbit", whatToChange(plan, new VehicleSizer().size(plan, source), search));
        }
        return settled(search, found, source, optimizer, progress).with(freeThrust(search.plan()));
    }

    /** Vehicle and flight in agreement, steered anew once if they do not get there. */
    private FlownSizing settled(
            FlownSearch search,
            FlownSearch.Found found,
            EngineSource source,
            AscentOptimizer optimizer,
            FlightProgress progress) {
        try {
            return settled(search, found.design(), source, optimizer, progress);
        } catch (NotConverged again) {
            FlownSearch.Found anew = search.grown(search.scanned(found.design()));
            FlownSearch.Found better = search.grown(search.improved(anew, 0.04, 2e-3, 120));
            return settled(search, better.design(), source, optimizer, progress);
        }
    }

    /** Where engines cost no mass their number says nothing. */
    private static List<Warning> freeThrust(VehiclePlan plan) {
        return plan.stages().stream()
                .filter(stage -> stage.engines().given().isEmpty() && !(stage.dryMass() instanceof BuiltUpDryMass))
                .map(stage -> new Warning(
                        "vehicle",
                        "the dry mass of " + stage.name() + " does not grow with its engines, so that the flight chose their"
                                + " number at no cost: state engines, or let the dry mass be built up"))
                .toList();
    }

    /** Height (m) at which the free-molecular heating of a satellite's speed is the limit. */
    static double lowestInsertion(AscentMission mission, Atmosphere air) {
        double lowest = 100e3;
        double highest = 400e3;
        return RootFinder.between(
                        "insertion height by heating",
                        h -> {
                            double speed = mission.planet().speed(h, h, Math.max(h, mission.apogeeAltitude()))
                                    - mission.planet().rotationCredit(mission.inclination());
                            return Math.log(0.5 * air.at(h).density() * Math.pow(speed, 3) / mission.heatingLimit());
                        },
                        lowest,
                        highest,
                        1e-6)
                .value();
    }

    /** A choice that flies: the best of a few splits, with more engines where those asked for do not lift it. */
    private static FlownSearch.Found start(FlownSearch search, VehiclePlan plan, EngineSource source) {
        double deltaV = plan.mission().total();
        VehicleSizing sized = new VehicleSizer().size(plan, source);
        List<Double> optimum = sized.stages().stream()
                .map(stage -> stage.deltaV() / deltaV)
                .toList();
        List<List<Double>> splits = new ArrayList<>();
        int stages = plan.stages().size();
        if (search.sharesFree()) {
            for (double first : new double[] {0.3, 0.4, 0.22}) {
                splits.add(split(first, stages));
            }
        }
        splits.add(optimum);
        FlownSearch.Found best = new FlownSearch.Found(null, Double.POSITIVE_INFINITY, false);
        for (double more : new double[] {1, 1.35, 2}) {
            for (List<Double> shares : splits) {
                FlownSearch.Found found = started(search, plan, source, shares, more);
                if (found.flies() && found.cost() < best.cost()) {
                    best = found;
                }
            }
            if (best.flies()) {
                return best;
            }
        }
        throw new LimitReached("ascent.orbit", whatToChange(plan, sized, search));
    }

    /** A split with engines by the rule, sized for what its flight takes. */
    private static FlownSearch.Found started(
            FlownSearch search, VehiclePlan plan, EngineSource source, List<Double> shares, double more) {
        double deltaV = plan.mission().total();
        FlownSearch.Found found = null;
        for (int i = 0; i < MOST_STARTS; i++) {
            FlownDesign design = new FlownDesign(
                    shares,
                    engines(plan, source, shares, deltaV, more),
                    search.insertion(),
                    new Steering(Math.toRadians(2), Steering.USUAL_FREE_ABOVE),
                    deltaV,
                    Optional.empty());
            FlownSearch.Found next = search.scanned(design);
            if (!next.flies()) {
                return found == null ? next : search.grown(found);
            }
            found = next;
            if (Math.abs(found.design().deltaV() - deltaV) < NEAR) {
                break;
            }
            deltaV = found.design().deltaV();
        }
        return search.grown(found);
    }

    private static List<Double> split(double first, int stages) {
        List<Double> shares = new ArrayList<>(List.of(first));
        for (int i = 1; i < stages; i++) {
            shares.add((1 - first) / (stages - 1));
        }
        return shares;
    }

    /** Engines by the rule of the plan at a split, times a factor where it leaves their number open. */
    private static List<Integer> engines(
            VehiclePlan plan, EngineSource source, List<Double> shares, double deltaV, double more) {
        List<StagePlan> stages = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            stages.add(plan.stages().get(i).withShare(shares.get(i)));
        }
        List<Integer> counts = new ArrayList<>();
        try {
            VehicleSizing sized = new VehicleSizer()
                    .size(plan.withStages(stages).withMission(DeltaVBudget.of(deltaV)), source);
            for (int i = 0; i < shares.size(); i++) {
                int count = sized.stages().get(i).engines();
                boolean fixed = plan.stages().get(i).engines().given().isPresent();
                counts.add(fixed ? count : Math.min(EngineCount.MOST, (int) Math.ceil(more * count)));
            }
        } catch (LimitReached none) {
            plan.stages().forEach(stage -> counts.add(stage.engines().given().orElse(1)));
        }
        return counts;
    }

    private static String whatToChange(VehiclePlan plan, VehicleSizing sized, FlownSearch search) {
        List<String> help = new ArrayList<>();
        for (int i = 0; i < sized.stages().size(); i++) {
            StageSizing stage = sized.stages().get(i);
            double wanted = i == 0 ? 1.2 : 0.6;
            if (stage.thrustToWeight() < wanted) {
                help.add(String.format(
                        Locale.ROOT,
                        "%s starts at %.2f of its weight: give it more engines or thrust%s",
                        stage.name(),
                        stage.thrustToWeight(),
                        i > 0 && !search.sharesFree() ? ", or a smaller delta_v_share" : ""));
            }
        }
        if (!search.sharesFree() && plan.stages().size() > 1) {
            help.add("leave delta_v_share out so that the flight chooses the split");
        }
        if (!search.ascent().insertionFree()) {
            help.add("leave insertion_altitude out so that the flight chooses it");
        }
        if (help.isEmpty()) {
            help.add("give it a smaller payload, a lower orbit or another stage");
        }
        return String.format(
                Locale.ROOT,
                "no steering takes %s to %.0f km; %s",
                plan.name(),
                search.insertion() / 1e3,
                String.join("; ", help));
    }

    /** Other numbers of engines, one stage at a time, as long as they make the vehicle better. */
    private static FlownSearch.Found withEngines(
            FlownSearch search, FlownSearch.Found from, FlightProgress progress) {
        Map<List<Integer>, FlownSearch.Found> tried = new HashMap<>();
        FlownSearch.Found best = from;
        tried.put(best.design().engines(), best);
        boolean moved = true;
        while (moved && tried.size() < MOST_COUNTS) {
            moved = false;
            for (int stage = 0; stage < search.plan().stages().size(); stage++) {
                if (search.plan().stages().get(stage).engines().given().isPresent()) {
                    continue;
                }
                int count = best.design().engines().get(stage);
                int wide = (int) Math.round(0.15 * count);
                for (int step : wide > 1 ? new int[] {wide, -wide, 1, -1} : new int[] {1, -1}) {
                    FlownSearch.Found other = another(search, best, stage, count + step, tried);
                    if (other.flies() && other.cost() < best.cost() - WORTH) {
                        best = other;
                        moved = true;
                        break;
                    }
                }
                progress.at(Math.min(0.85, 0.4 + 0.03 * tried.size()), "choosing the numbers of engines");
            }
        }
        return best;
    }

    private static FlownSearch.Found another(
            FlownSearch search,
            FlownSearch.Found from,
            int stage,
            int count,
            Map<List<Integer>, FlownSearch.Found> tried) {
        if (count < 1 || count > EngineCount.MOST) {
            return new FlownSearch.Found(from.design(), Double.POSITIVE_INFINITY, false);
        }
        FlownDesign design = from.design().withEngines(stage, count);
        FlownSearch.Found known = tried.get(design.engines());
        if (known != null) {
            return known;
        }
        FlownSearch.Found found = search.improved(new FlownSearch.Found(design, 0, true), 0.03, 3e-3, 60);
        tried.put(design.engines(), found);
        return found;
    }

    /** Takes what a flight tells of fairing and way back into the plan. */
    private void learn(
            FlownSearch search, FlownSearch.Found found, EngineSource source, AscentOptimizer optimizer) {
        if (!found.flies()) {
            return;
        }
        FlownDesign design = found.design();
        VehicleSizing sizing = new VehicleSizer().size(design.plan(search.plan(), design.deltaV()), source);
        design.aim().ifPresent(optimizer::aimFrom);
        try {
            AscentResult flight = optimizer.estimate(
                    VehicleInFlight.of(sizing, search.ascent()), design.mission(search.ascent()), design.steering());
            search.with(learned(search.plan(), sizing, flight));
        } catch (NotConverged laterPerhaps) {
            // what it would have told is told again when vehicle and flight settle
        }
    }

    private VehiclePlan learned(VehiclePlan plan, VehicleSizing sizing, AscentResult flight) {
        return withFairing(withReturn(plan, StageReturn.of(sizing, flight, atmosphere)), flight);
    }

    /** Sizing and flight in turns. */
    private FlownSizing settled(
            FlownSearch search,
            FlownDesign design,
            EngineSource source,
            AscentOptimizer optimizer,
            FlightProgress progress) {
        VehicleSizer sizer = new VehicleSizer();
        AscentPlan ascent = search.ascent();
        AscentMission mission = design.mission(ascent);
        DeltaVBudget base = search.plan().mission().entering(design.entry(ascent));
        VehiclePlan current = search.plan()
                .withStages(design.stages(search.plan()))
                .withMission(DeltaVBudget.of(design.deltaV()));
        design.aim().ifPresent(optimizer::aimFrom);
        double miss = Double.POSITIVE_INFINITY;
        double lastMiss = Double.NaN;
        double lastDeltaV = Double.NaN;
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            VehicleSizing sizing = sizer.size(current, source);
            double deltaV = current.mission().total();
            AscentResult flight;
            try {
                flight = optimizer.estimate(VehicleInFlight.of(sizing, ascent), mission, design.steering());
            } catch (NotConverged missed) {
                if (Double.isNaN(lastDeltaV)) {
                    throw missed;
                }
                design.aim().ifPresent(optimizer::aimFrom);
                current = current.withMission(DeltaVBudget.of((deltaV + lastDeltaV) / 2));
                continue;
            }
            miss = flight.margin() - base.afterAscent();
            VehiclePlan next = learned(current, sizing, flight);
            if (Math.abs(miss) < TOLERANCE && current.mission().terms().size() > 1) {
                AscentResult shown = inDetail(optimizer, VehicleInFlight.of(sizing, ascent), mission, flight);
                progress.at(1, "vehicle and flight agree");
                return new FlownSizing(sizing, shown, StageReturn.of(sizing, shown, atmosphere), round);
            }
            double slope = (miss - lastMiss) / (deltaV - lastDeltaV);
            lastMiss = miss;
            lastDeltaV = deltaV;
            if (Math.abs(miss) < TOLERANCE) {
                current = next.withMission(base.withAscent(terms(flight)));
            } else {
                double step = miss / (slope > LEAST_SLOPE ? Math.min(MOST_SLOPE, slope) : 1);
                current = next.withMission(DeltaVBudget.of(deltaV - Math.max(-LARGEST_STEP, Math.min(LARGEST_STEP, step))));
            }
        }
        throw new NotConverged(
                "vehicle sized on its own flight",
                MOST_ROUNDS,
                Math.abs(miss),
                "speed left over, in m/s, still changes");
    }

    /** A flight once more in small steps; as it is where the smaller steps do not end in the orbit. */
    private static AscentResult inDetail(
            AscentOptimizer optimizer, AscentVehicle vehicle, AscentMission mission, AscentResult flight) {
        try {
            return optimizer.flyWith(vehicle, mission, flight.steering());
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
                0,
                first.withRecovery(dryMass, first.recovery().flown(back.boostbackDeltaV(), back.landingDeltaV())));
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
}
