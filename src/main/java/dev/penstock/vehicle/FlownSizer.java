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
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleConsumer;

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
            "within 0.8 % of payload of what a direct optimisation over the same choices found, for twenty invented vehicles",
            List.of("common practice, no source"));

    /** Improvement of the cost (-) for which another number of engines is taken. */
    private static final double WORTH = 1e-6;

    /**
     * Cost (-) above the best within which another number of engines is searched as far as the best was: a short search of another
     * number ends up to 1.8e-3 above where it leads in the end (seen on one invented vehicle).
     */
    private static final double CLOSE = 2e-3;

    /** The same after a longer search. */
    private static final double CLOSER = 4e-4;

    /** No other number of engines is searched further. */
    private static final double NONE = Double.NEGATIVE_INFINITY;

    private static final String COUNTING = "choosing the numbers of engines";
    private static final int MOST_COUNTS = 14;

    /** Improvement of the cost (-) below which a search ends: about 0.02 % of the start mass. */
    private static final double POLISHED = 1e-5;

    private static final int MOST_POLISHES = 3;

    /** First step of the search that ends on models of cost and limits (-), and most rounds of it. */
    private static final double FINISH = 0.008;

    private static final int MOST_FINISHES = 12;

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
                        plan.name(),
                        "mission.orbit_altitude",
                        "missing",
                        "a flight needs it, for example \"200 km\", or perigee_altitude with apogee_altitude, or c3"));
        AscentOptimizer optimizer = new AscentOptimizer(atmosphere);
        FlownSearch search = new FlownSearch(
                plan.withNotes(List.of()), source, optimizer, lowestInsertion(ascent.mission(), atmosphere));
        FlownSettler settler = new FlownSettler(search, source, optimizer, atmosphere);
        FlownSearch.Found found = FlownStart.find(search, plan, source);
        progress.at(0.2, "a first flight found");
        found = search.acrossSplits(found, new double[] {0.25, 0.34, 0.43, 0.52}, 60);
        found = search.grown(search.improved(found, 0.05, 3e-3, 100));
        settler.learn(found);
        progress.at(0.4, "split and steering chosen");
        found = search.grown(withEngines(search, found, NONE, done -> progress.at(0.4 + 0.25 * done, COUNTING)));
        settler.learn(found);
        double first = found.design().shares().get(0);
        progress.at(0.65, "split around it");
        found = search.acrossSplits(
                found,
                new double[] {first - 0.08, first - 0.04, first - 0.02, first + 0.02, first + 0.04, first + 0.08},
                50);
        found = polished(search, found);
        found = withEngines(search, found, CLOSE, done -> progress.at(0.75 + 0.1 * done, COUNTING));
        progress.at(0.9, "engines chosen");
        if (!found.flies()) {
            throw new LimitReached(
                    "ascent.orbit", FlownStart.whatToChange(plan, new VehicleSizer().size(plan, source), search));
        }
        return settler.settled(found, progress).with(freeThrust(plan));
    }

    /** Searched over everything again and again, then on models of what the cost is made of, until that makes it hardly better. */
    private static FlownSearch.Found polished(FlownSearch search, FlownSearch.Found from) {
        FlownSearch.Found best = from;
        for (int round = 0; round < MOST_POLISHES; round++) {
            FlownSearch.Found next = search.grown(search.improved(best, round % 2 == 0 ? 0.05 : 0.02, 3e-4, 200));
            if (next.flies()) {
                FlownSearch.Found end = search.grown(search.finished(next, FINISH, MOST_FINISHES, POLISHED / 20));
                next = end.flies() && end.cost() < next.cost() ? end : next;
            }
            double gained = best.cost() - next.cost();
            best = gained > 0 || !best.flies() ? next : best;
            if (round > 0 && gained < POLISHED) {
                break;
            }
        }
        return best;
    }

    /** Where engines cost no mass their number says nothing. */
    private static List<Warning> freeThrust(VehiclePlan plan) {
        return plan.stages().stream()
                .filter(stage ->
                        stage.engines().given().isEmpty() && !stage.dryMass().growsWithEngines())
                .map(stage -> new Warning(
                        "vehicle",
                        "the dry mass of " + stage.name()
                                + " does not grow with its engines, so that the flight chose their"
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
                            double speed =
                                    mission.highestSpeed(h) - mission.planet().rotationCredit(mission.inclination());
                            return Math.log(0.5 * air.at(h).density() * Math.pow(speed, 3) / mission.heatingLimit());
                        },
                        lowest,
                        highest,
                        1e-6)
                .value();
    }

    /** Other numbers of engines, one stage at a time, as long as they make the vehicle better; those close by are searched to the end. */
    private static FlownSearch.Found withEngines(
            FlownSearch search, FlownSearch.Found from, double close, DoubleConsumer done) {
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
                    FlownSearch.Found other =
                            another(search, best, best.design().withEngines(stage, count + step), close, tried);
                    if (other.flies() && other.cost() < best.cost() - WORTH) {
                        best = other;
                        moved = true;
                        break;
                    }
                }
                done.accept(Math.min(1, tried.size() / (double) MOST_COUNTS));
            }
            for (int stage = 0; stage < search.plan().stages().size() - 1 && !moved && close > NONE; stage++) {
                FlownSearch.Found other = exchanged(search, best, stage, close, tried);
                moved = other.flies() && other.cost() < best.cost() - WORTH;
                best = moved ? other : best;
            }
        }
        return best;
    }

    /** The better of one engine more on a stage with one less on the next, and the reverse: each alone may be worse. */
    private static FlownSearch.Found exchanged(
            FlownSearch search,
            FlownSearch.Found from,
            int stage,
            double close,
            Map<List<Integer>, FlownSearch.Found> tried) {
        List<StagePlan> plans = search.plan().stages();
        if (plans.get(stage).engines().given().isPresent()
                || plans.get(stage + 1).engines().given().isPresent()) {
            return from;
        }
        FlownSearch.Found best = from;
        for (int step : new int[] {1, -1}) {
            List<Integer> counts = from.design().engines();
            FlownDesign design = from.design()
                    .withEngines(stage, counts.get(stage) + step)
                    .withEngines(stage + 1, counts.get(stage + 1) - step);
            FlownSearch.Found other = another(search, from, design, close, tried);
            best = other.flies() && other.cost() < best.cost() ? other : best;
        }
        return best;
    }

    private static FlownSearch.Found another(
            FlownSearch search,
            FlownSearch.Found from,
            FlownDesign design,
            double close,
            Map<List<Integer>, FlownSearch.Found> tried) {
        if (design.engines().stream().anyMatch(count -> count < 1 || count > EngineCount.MOST)) {
            return new FlownSearch.Found(from.design(), Double.POSITIVE_INFINITY, false);
        }
        FlownSearch.Found known = tried.get(design.engines());
        if (known != null) {
            return known;
        }
        FlownSearch.Found found = search.improved(new FlownSearch.Found(design, 0, true), 0.06, 2e-3, 100);
        if (found.flies() && found.cost() < from.cost() + close) {
            found = search.grown(search.improved(search.grown(found), 0.05, 3e-4, 200));
            if (found.flies() && found.cost() < from.cost() + CLOSER) {
                found = polished(search, found);
            }
        }
        tried.put(design.engines(), found);
        return found;
    }
}
