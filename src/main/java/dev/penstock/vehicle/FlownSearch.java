package dev.penstock.vehicle;

import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.numerics.BoundedSystemSolver;
import dev.penstock.numerics.LimitedDescent;
import dev.penstock.numerics.Minimizer;
import dev.penstock.numerics.Ranges;
import dev.penstock.vehicle.ascent.Arrival;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentVehicle;
import dev.penstock.vehicle.ascent.Excess;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.ascent.Steering;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Chooses split, insertion height and steering of a vehicle with given numbers of engines on its flight, all together.
 *
 * <pre>
 * for every choice: size at Δv, fly, left over = m;   cost = start mass (or payload) sized at Δv + needed − m
 * </pre>
 *
 * The cost is that of a vehicle whose flight leaves exactly what the mission needs, to the first order in what is left over;
 * Δv follows the best choice from search to search, so that the order does not matter at the end. Powell's BOBYQA over all
 * variables; the two end conditions of the flight are met inside every evaluation. Not thread-safe.
 */
final class FlownSearch {

    /** Cost of what does not fly or close, above the cost of anything that does. */
    private static final double FAILS = 3;

    /** Weight on thrust to weight that is missing. */
    private static final double RULE = 20;

    /** Thrust over weight by which the search stays above the rule. */
    private static final double RULE_MARGIN = 0.002;

    /** Weight on limits of the flight that are missed. */
    private static final double LIMIT = 1;

    /** Thrust over weight at liftoff that a free number of engines keeps: common practice, no source. */
    private static final double LEAST_LIFTOFF = 1.2;

    private static final int GROWTHS = 6;
    private static final int STEERED_FLIGHTS = 50;

    /** Change of the delta-v (m/s) at which a vehicle counts as grown to that of its flight. */
    private static final double GROWN = 60;

    /** Change of what is kept to turn back (m/s) below which a vehicle counts as grown to that of its flight. */
    private static final double TURNED = 15;

    /** Speed (m/s) that matters when delta-v and boost-back are matched, and the share of it to which they are. */
    private static final double MATCH_SCALE = 100;

    private static final double MATCHED = 2e-3;

    private static final double LEAST_SHARE = 0.04;
    private static final double HIGHEST_INSERTION = 300e3;
    private static final double MOST_DEFICIT = 3000;

    private final VehicleSizer sizer = new VehicleSizer();
    private final VehiclePlan asked;
    private final EngineSource source;
    private final AscentOptimizer optimizer;
    private final double lowestInsertion;
    private final boolean sharesFree;
    private final boolean insertionFree;
    private VehiclePlan plan;

    FlownSearch(VehiclePlan asked, EngineSource source, AscentOptimizer optimizer, double lowestInsertion) {
        this.asked = asked;
        this.plan = asked;
        this.source = source;
        this.optimizer = optimizer;
        AscentMission mission = ascent().mission();
        this.lowestInsertion = Math.min(lowestInsertion, mission.target().highestLevel());
        this.sharesFree = asked.stages().size() > 1
                && asked.stages().stream().anyMatch(s -> s.deltaVShare().isEmpty());
        this.insertionFree = ascent().insertionFree() && mission.target().highestLevel() - this.lowestInsertion > 1e3;
    }

    /**
     * A choice.
     *
     * @param design the choice, with the delta-v that its flight takes
     * @param cost what it costs (-)
     * @param flies whether it reaches the orbit
     * @param sized ideal delta-v at which it was flown (m/s)
     * @param parts what the cost is made of, where it flies
     */
    record Found(FlownDesign design, double cost, boolean flies, double sized, double[] parts) {

        Found(FlownDesign design, double cost, boolean flies) {
            this(design, cost, flies, design == null ? 0 : design.deltaV(), new double[0]);
        }
    }

    AscentPlan ascent() {
        return asked.ascent().orElseThrow();
    }

    boolean sharesFree() {
        return sharesFree;
    }

    /** Takes on what the last flight told of the fairing and of the way back. */
    void with(VehiclePlan learned) {
        plan = learned;
    }

    VehiclePlan plan() {
        return plan;
    }

    double insertion() {
        return insertionFree
                ? Math.min(lowestInsertion + 2e3, highestInsertion())
                : ascent().mission().insertionAltitude();
    }

    private double highestInsertion() {
        return Math.min(HIGHEST_INSERTION, ascent().mission().target().highestLevel());
    }

    /** Speed that must be left at insertion (m/s). */
    private double needed(FlownDesign design) {
        return plan.mission().afterAscent(design.entry(ascent()));
    }

    /** What a choice costs, and the ideal delta-v (m/s) that it takes; flown twice where it keeps what turning back takes. */
    Found cost(FlownDesign design) {
        Found found = costOnce(design);
        if (!found.flies() || !turnsBack()) {
            return found;
        }
        Found again = costOnce(found.design());
        return again.flies() ? again : found;
    }

    private Found costOnce(FlownDesign design) {
        VehiclePlan sized = design.plan(plan);
        VehicleSizing sizing;
        try {
            sizing = sizer.size(sized, source);
        } catch (LimitReached | OutsideValidity open) {
            return new Found(design, 3 * FAILS + badness(sized), false);
        }
        AscentVehicle vehicle = VehicleInFlight.of(sizing, ascent());
        AscentMission mission = design.mission(ascent());
        Optional<Arrival> arrival = optimizer.arrival(vehicle, mission, design.steering());
        if (arrival.isEmpty()) {
            double heavy = Math.max(0, 1.1 - AscentOptimizer.lift(vehicle, mission));
            return new Found(design, FAILS * (1.5 + heavy) + scale(badness(sized)), false);
        }
        double deficit = needed(design) - arrival.get().margin();
        double bounded = Math.max(-MOST_DEFICIT, Math.min(MOST_DEFICIT, deficit));
        double deltaV = Math.max(100, design.deltaV() + bounded);
        FlownDesign flown =
                design.flown(deltaV, turningBack(arrival.get()), arrival.get().aim());
        VehiclePlan corrected = flown.plan(plan);
        try {
            VehicleSizing answer = sizer.size(corrected, source);
            double[] parts = parts(answer, arrival.get(), mission, Math.abs(deficit - bounded) / 1e3);
            return new Found(flown, sum(parts), true, design.deltaV(), parts);
        } catch (LimitReached | OutsideValidity open) {
            return new Found(flown, FAILS + scale(badness(corrected)), false);
        }
    }

    /** @return whether the first stage turns back to its site and keeps for that what its flight asks */
    boolean turnsBack() {
        Recovery kept = plan.stages().get(0).recovery();
        return kept.mode() == Recovery.Mode.LAUNCH_SITE && kept.open().boostback();
    }

    /** What a flight asks the first stage to keep for its way back to the site (m/s), where that is open. */
    private OptionalDouble turningBack(Arrival arrival) {
        int first = plan.boosters().isPresent() ? 1 : 0;
        return turnsBack() && arrival.partings().size() > first
                ? OptionalDouble.of(StageReturn.turningBack(arrival.partings().get(first)))
                : OptionalDouble.empty();
    }

    /** Change of what is kept to turn back (m/s); none where nothing is. */
    private double turned(FlownDesign from, Found to) {
        double kept = from.turnBack().orElse(plan.stages().get(0).recovery().boostback());
        return Math.abs(to.design().turnBack().orElse(kept) - kept);
    }

    /**
     * The same choice with delta-v and boost-back that are those of its own flight, both at once: each by itself may run away, as
     * what turning back takes can grow as fast as what is kept for it.
     */
    FlownDesign matched(FlownDesign design) {
        if (design.turnBack().isEmpty()) {
            return design;
        }
        design.aim().ifPresent(optimizer::aimFrom);
        FlownDesign[] last = {design};
        try {
            new BoundedSystemSolver("vehicle that turns back", 30)
                    .solve(
                            List.of(
                                    new BoundedSystemSolver.Unknown(
                                            "delta-v", "m/s", 100, 3e4, MATCH_SCALE, design.deltaV()),
                                    new BoundedSystemSolver.Unknown(
                                            "boost-back",
                                            "m/s",
                                            0,
                                            1e4,
                                            MATCH_SCALE,
                                            design.turnBack().getAsDouble())),
                            List.of("speed left over", "boost-back kept"),
                            (x, miss) -> {
                                FlownDesign at = last[0].sizedFor(x[0]).turningBack(OptionalDouble.of(x[1]));
                                Found found = costOnce(at);
                                if (!found.flies()) {
                                    throw new NotConverged("vehicle that turns back", 1, 1, "it reaches no orbit");
                                }
                                last[0] = at;
                                miss[0] = (found.design().deltaV() - x[0]) / MATCH_SCALE;
                                miss[1] = (found.design().turnBack().orElse(x[1]) - x[1]) / MATCH_SCALE;
                            },
                            MATCHED);
            return last[0];
        } catch (NotConverged open) {
            return design;
        }
    }

    /** What a cost is made of: what is to be small, by how much limits of the flight are missed (-), then the rules of the stages. */
    private double[] parts(VehicleSizing answer, Arrival arrival, AscentMission mission, double open) {
        double[] parts = new double[3 + answer.stages().size()];
        parts[0] = scale(badness(answer)) + open + LIMIT * arrival.overload();
        parts[1] = Excess.over(arrival.stagingPressure(), mission.stagingPressureLimit());
        parts[2] = Excess.over(arrival.heating(), mission.heatingLimit());
        for (int i = 0; i < answer.stages().size(); i++) {
            parts[3 + i] = missing(answer, i) + RULE_MARGIN;
        }
        return parts;
    }

    /** Cost of its parts: limits and rules squared, so that the search sees no edge. */
    private static double sum(double[] parts) {
        double sum = parts[0];
        for (int i = 1; i < parts.length; i++) {
            sum += (i < 3 ? LIMIT : RULE) * Excess.squared(parts[i]);
        }
        return sum;
    }

    /** Keeps costs of vehicles that fly below the one at which they count as failing. */
    private static double scale(double badness) {
        return 0.05 * badness;
    }

    private double badness(VehiclePlan sized) {
        try {
            return sizer.badness(sized, source);
        } catch (LimitReached | NotConverged | OutsideValidity none) {
            return 100;
        }
    }

    private double badness(VehicleSizing sizing) {
        if (sizing.ispFactor().isPresent()) {
            return Math.log(sizing.ispFactor().getAsDouble());
        }
        return asked.startMass().isPresent() ? -sizing.payloadFraction() : Math.log(chosenMass(sizing));
    }

    /** What the choices are about (kg): boosters are as heavy as they are stated to be. */
    private static double chosenMass(VehicleSizing sizing) {
        return sizing.startMass()
                - sizing.stages()
                        .get(0)
                        .boosters()
                        .map(BoosterSizing::startMass)
                        .orElse(0.0);
    }

    /** Thrust over weight by which the rule of a stage is missed (-); zero or less where it is met. */
    private double missing(VehicleSizing sizing, int i) {
        StagePlan rule = asked.stages().get(i);
        StageSizing stage = sizing.stages().get(i);
        double pressure = rule.ignitionPressure();
        double beside = stage.boosters().map(b -> b.thrustAt(pressure)).orElse(0.0);
        return rule.engines()
                .missing(
                        stage.startMass(),
                        stage.engine().thrustAt(pressure),
                        beside,
                        stage.engines(),
                        i == 0 ? LEAST_LIFTOFF : 0);
    }

    /** The best steering of a row of tilts for a choice that has none yet; its cost tells whether it flies. */
    Found scanned(FlownDesign design) {
        try {
            VehicleSizing sizing = sizer.size(design.plan(plan), source);
            AscentVehicle vehicle = VehicleInFlight.of(sizing, ascent());
            Steering steering = optimizer.scan(vehicle, design.mission(ascent()), FlightProgress.NONE);
            return cost(design.steered(steering));
        } catch (LimitReached | OutsideValidity none) {
            return new Found(design, 10 * FAILS, false);
        }
    }

    /** The same vehicle steered anew to the same height. */
    Found steered(FlownDesign design) {
        design.aim().ifPresent(optimizer::aimFrom);
        Found start = cost(design);
        return improved(start.flies() ? start : scanned(design), 0.04, 2e-3, STEERED_FLIGHTS, false, false);
    }

    /** The same choice once its delta-v is that of its own flight, steered anew where it no longer flies as before. */
    Found grown(Found found) {
        Found at = found;
        for (int i = 0; i < GROWTHS && at.flies(); i++) {
            at.design().aim().ifPresent(optimizer::aimFrom);
            Found next = cost(at.design());
            if (!next.flies()) {
                next = scanned(at.design());
            }
            if (Math.abs(next.design().deltaV() - at.design().deltaV()) < GROWN && turned(at.design(), next) < TURNED) {
                return next;
            }
            at = next;
        }
        return at;
    }

    /**
     * @param start a choice that flies
     * @param radius first radius of the search as a fraction of each range (-)
     * @param last radius at which it ends (-)
     * @param flights most evaluations
     * @return the best choice found, at least as good as the start
     */
    Found improved(Found start, double radius, double last, int flights) {
        return improved(start, radius, last, flights, sharesFree, insertionFree);
    }

    /**
     * The valley over the split is flat and the penalties make it bend, so that one search over everything can stop short:
     * several splits, each held while the rest is searched, the best then searched over everything.
     *
     * @param start a choice that flies
     * @param firsts shares of the first stage to try, that of the start besides
     * @param flights most evaluations for each
     * @return the best choice found
     */
    Found acrossSplits(Found start, double[] firsts, int flights) {
        Found best = grown(improved(start, 0.06, 3e-3, flights, false, insertionFree));
        for (double first : sharesFree ? firsts : new double[0]) {
            Found other = grown(scannedIfNeeded(at(start.design(), first)));
            if (other.flies()) {
                other = grown(improved(other, 0.06, 3e-3, flights, false, insertionFree));
            }
            if (other.flies() && (!best.flies() || other.cost() < best.cost())) {
                best = other;
            }
        }
        return best;
    }

    private Found scannedIfNeeded(FlownDesign design) {
        design.aim().ifPresent(optimizer::aimFrom);
        Found found = cost(design);
        return found.flies() ? found : scanned(design);
    }

    /** The same choice with another share of the first stage, those above in the same proportion as before. */
    private static FlownDesign at(FlownDesign design, double first) {
        double share = Math.max(LEAST_SHARE, Math.min(1 - LEAST_SHARE, first));
        double rest = 1 - design.shares().get(0);
        List<Double> shares = new ArrayList<>(List.of(share));
        for (double above : design.shares().subList(1, design.shares().size())) {
            shares.add(above / rest * (1 - share));
        }
        return design.choosing(shares, design.insertion(), design.steering());
    }

    private Found improved(
            Found start, double radius, double last, int flights, boolean withShares, boolean withInsertion) {
        List<Double> at = new ArrayList<>();
        List<Double> low = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        FlownDesign design = start.design();
        variables(design, at, low, high, withShares, withInsertion);
        design.aim().ifPresent(optimizer::aimFrom);
        Found[] best = {cost(design)};
        Minimizer.within(
                "flown " + asked.name(),
                x -> {
                    Found found = cost(design(design, x, withShares, withInsertion));
                    if (found.cost() < best[0].cost()) {
                        best[0] = found;
                    }
                    return found.cost();
                },
                array(at),
                array(low),
                array(high),
                radius,
                last,
                flights);
        return best[0];
    }

    private void variables(
            FlownDesign design,
            List<Double> at,
            List<Double> low,
            List<Double> high,
            boolean withShares,
            boolean withInsertion) {
        variable(
                at,
                low,
                high,
                Math.log(design.steering().tilt()),
                Math.log(Steering.LEAST_TILT),
                Math.log(Steering.MOST_TILT));
        variable(at, low, high, design.steering().freeAbove(), Steering.LEAST_FREE_ABOVE, Steering.MOST_FREE_ABOVE);
        if (withInsertion) {
            variable(at, low, high, design.insertion(), lowestInsertion, highestInsertion());
        }
        if (withShares) {
            double left = 1;
            for (int i = 0; i < design.shares().size() - 1; i++) {
                variable(at, low, high, design.shares().get(i) / left, LEAST_SHARE, 1 - LEAST_SHARE);
                left -= design.shares().get(i);
            }
        }
    }

    /** Ends a search over everything on models of what its cost is made of, from a choice that flies. */
    Found finished(Found start, double first, int rounds, double least) {
        List<Double> at = new ArrayList<>();
        List<Double> low = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        variables(start.design(), at, low, high, sharesFree, insertionFree);
        start.design().aim().ifPresent(optimizer::aimFrom);
        Ranges ranges = new Ranges(array(low), array(high));
        FlownFinish finish =
                new FlownFinish(this::cost, (from, x) -> design(from, x, sharesFree, insertionFree), ranges, start);
        return new LimitedDescent(FlownSearch::sum, rounds, least).from(finish, ranges.shares(array(at)), start, first);
    }

    private static void variable(
            List<Double> at, List<Double> low, List<Double> high, double value, double least, double most) {
        at.add(value);
        low.add(least);
        high.add(most);
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static FlownDesign design(FlownDesign from, double[] x, boolean withShares, boolean withInsertion) {
        int next = 2;
        double insertion = withInsertion ? x[next++] : from.insertion();
        List<Double> shares = from.shares();
        if (withShares) {
            shares = new ArrayList<>();
            double left = 1;
            while (next < x.length) {
                double share = left * x[next++];
                shares.add(share);
                left -= share;
            }
            shares.add(left);
        }
        return from.choosing(shares, insertion, new Steering(Math.exp(x[0]), x[1]));
    }
}
