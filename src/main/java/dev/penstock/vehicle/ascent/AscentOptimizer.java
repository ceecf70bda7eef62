package dev.penstock.vehicle.ascent;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.BoundedSystemSolver;
import dev.penstock.numerics.Minimizer;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the steering that leaves most mass in a given orbit. For every tilt after release and height of free steering the
 * two angles of the linear-tangent law are found that end level at the insertion height with orbital energy; tilt and height
 * are then searched by a coarse scan and Powell's BOBYQA. Linear-tangent steering is the optimum above the air in constant
 * gravity [lawden-1963]. Not thread-safe.
 */
public final class AscentOptimizer {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.steering",
            "Steering to orbit",
            "tilt after release, along the path up to a height, then tan θ = a − b t within |α| ≤ (qα)max/q; tilt and height"
                    + " with most mass in orbit",
            "ascents without a coast before insertion; insertion level; a second burn along the motion",
            "within some 10 m/s of the best steering for stages with thrust above half their weight, by judgement",
            List.of("lawden-1963"));

    private static final int SCAN = 14;
    /** Tilts that miss, after one that does not, after which larger ones fall back to the ground as well: seen, not shown. */
    private static final int MISSES_IN_A_ROW = 2;

    private static final double STEEP = Math.toRadians(80);
    private static final double MISS = 1e-5;
    private static final double COARSE = 1e-7;
    private static final double FINE = 1e-10;
    /** Longest steps (s): of a search, and of a flight that is shown. */
    private static final double LONG_STEP = 50;

    private static final double SHORT_STEP = 2;

    /** Share of the liftoff weight by which thrust must exceed it. */
    private static final double LIFTS = 1.02;

    private static final int MOST_FLIGHTS = 120;
    private static final int FEW_FLIGHTS = 40;

    /** First guesses of the two angles (rad): 25 and -5, 45 and -10, 60 and 0 degrees. */
    private static final double[][] GUESSES = {{0.436, -0.087}, {0.785, -0.175}, {1.047, 0}};

    private static final List<String> MISSES = List.of("insertion height", "level flight");

    private final Atmosphere atmosphere;

    private AscentFlight flight;
    private AscentMission mission;
    private BoundedSystemSolver shooting = new BoundedSystemSolver("steering to orbit", 40);
    private double pitchStart = GUESSES[0][0];
    private double pitchEnd = GUESSES[0][1];
    private PenstockException lastFailure;
    private int evaluations;

    /**
     * @param atmosphere the air
     */
    public AscentOptimizer(Atmosphere atmosphere) {
        this.atmosphere = atmosphere;
    }

    /**
     * @param vehicle what is flown
     * @param target where to
     * @param progress told how far the search has come
     * @return the flight
     * @throws LimitReached if the vehicle does not lift off, or no steering of this kind reaches the orbit
     */
    public AscentResult fly(AscentVehicle vehicle, AscentMission target, FlightProgress progress) {
        requireLiftOff(vehicle, target);
        evaluations = 0;
        forget();
        Steering start = scan(vehicle, target, progress);
        return inDetail(vehicle, target, refined(vehicle, target, start, MOST_FLIGHTS));
    }

    /**
     * @param vehicle what is flown
     * @param target where to
     * @param steering steering, best or not
     * @return the flight
     * @throws NotConverged if it misses the orbit
     */
    public AscentResult flyWith(AscentVehicle vehicle, AscentMission target, Steering steering) {
        requireLiftOff(vehicle, target);
        return inDetail(vehicle, target, steering);
    }

    /**
     * A flight good to some centimetres per second, without close-set moments: for a vehicle that is still changing.
     *
     * @param vehicle what is flown
     * @param target where to
     * @param steering steering
     * @return the flight
     * @throws NotConverged if it misses the orbit
     */
    public AscentResult estimate(AscentVehicle vehicle, AscentMission target, Steering steering) {
        Arrival.Aim from = new Arrival.Aim(pitchStart, pitchEnd);
        try {
            prepare(vehicle, target, COARSE);
            aim(flight.throughTheAir(steering.tilt(), steering.freeAbove()));
            return recorded(vehicle, steering, COARSE, LONG_STEP);
        } catch (NotConverged rough) {
            // near a flight that just misses its orbit the two angles are too sensitive for rough steps
            aimFrom(from);
            prepare(vehicle, target, FINE);
            aim(flight.throughTheAir(steering.tilt(), steering.freeAbove()));
            return recorded(vehicle, steering, FINE, LONG_STEP);
        }
    }

    /**
     * @param vehicle what is flown
     * @param target where to
     * @param steering steering
     * @return what it tells, by the steps of a search; empty if the orbit is missed
     */
    public Optional<Arrival> arrival(AscentVehicle vehicle, AscentMission target, Steering steering) {
        if (lift(vehicle, target) <= LIFTS) {
            return Optional.empty();
        }
        mission = target;
        flight = new AscentFlight(vehicle, target, atmosphere);
        try {
            aim(flight.throughTheAir(steering.tilt(), steering.freeAbove()));
            flight.dynamics().look(flight.time(), flight.state());
            double heating = flight.dynamics().freeMolecularHeating();
            flight.onwards();
            flight.dynamics().look(flight.time(), flight.state());
            heating = Math.max(heating, flight.dynamics().freeMolecularHeating());
            return Optional.of(new Arrival(
                    flight.margin(),
                    flight.stagingPressure(),
                    flight.state()[AscentDynamics.OVERLOAD],
                    heating,
                    flight.partings(),
                    new Arrival.Aim(pitchStart, pitchEnd)));
        } catch (NotConverged missed) {
            lastFailure = missed;
            return Optional.empty();
        } finally {
            evaluations += flight.evaluations();
        }
    }

    /**
     * @param vehicle what is flown
     * @param target where to
     * @param progress told how far the search has come
     * @return the best of a row of tilts
     * @throws LimitReached if every one misses the orbit
     */
    public Steering scan(AscentVehicle vehicle, AscentMission target, FlightProgress progress) {
        double low = Math.log(Steering.LEAST_TILT);
        double high = Math.log(Steering.MOST_TILT);
        Steering best = null;
        double most = Double.NEGATIVE_INFINITY;
        int missed = 0;
        for (int i = 0; i < SCAN && missed < MISSES_IN_A_ROW; i++) {
            double tilt = Math.exp(low + (high - low) * i / (SCAN - 1));
            missed += best == null ? 0 : 1;
            for (double height : new double[] {Steering.USUAL_FREE_ABOVE, Steering.MOST_FREE_ABOVE}) {
                Steering steering = new Steering(tilt, height);
                Optional<Arrival> arrival = arrival(vehicle, target, steering);
                if (arrival.isPresent()) {
                    missed = 0;
                    if (arrival.get().margin() > most) {
                        best = steering;
                        most = arrival.get().margin();
                    }
                    break;
                }
            }
            progress.at(0.6 * (i + 1) / SCAN, "searching the tilt after release");
        }
        if (best == null) {
            throw new LimitReached(
                    "ascent.orbit",
                    String.format(
                            Locale.ROOT,
                            "no steering takes %s to %.0f km: %s",
                            vehicle.name(),
                            target.insertionAltitude() / 1e3,
                            lastFailure == null ? "every tilt misses" : lastFailure.getMessage()));
        }
        return best;
    }

    /**
     * @param vehicle what is flown
     * @param target where to
     * @param near steering of a similar flight, near which the search begins
     * @return the best steering found
     * @throws LimitReached if the vehicle does not lift off, or no steering of this kind reaches the orbit
     */
    public Steering steeredFrom(AscentVehicle vehicle, AscentMission target, Steering near) {
        requireLiftOff(vehicle, target);
        Steering start = arrival(vehicle, target, near).isPresent() ? near : scan(vehicle, target, FlightProgress.NONE);
        return refined(vehicle, target, start, FEW_FLIGHTS);
    }

    private Steering refined(AscentVehicle vehicle, AscentMission target, Steering start, int flights) {
        Minimizer.Minimum best = Minimizer.within(
                "steering of " + vehicle.name(),
                x -> -arrival(vehicle, target, new Steering(Math.exp(x[0]), x[1]))
                        .map(Arrival::margin)
                        .orElse(-1e4),
                new double[] {Math.log(start.tilt()), start.freeAbove()},
                new double[] {Math.log(Steering.LEAST_TILT), Steering.LEAST_FREE_ABOVE},
                new double[] {Math.log(Steering.MOST_TILT), Steering.MOST_FREE_ABOVE},
                0.08,
                1e-4,
                flights);
        return new Steering(Math.exp(best.point().get(0)), best.point().get(1));
    }

    private void prepare(AscentVehicle vehicle, AscentMission target, double tolerance) {
        mission = target;
        flight = new AscentFlight(vehicle, target, atmosphere, FlightRecorder.OFF, tolerance, LONG_STEP);
    }

    private AscentResult inDetail(AscentVehicle vehicle, AscentMission target, Steering steering) {
        prepare(vehicle, target, FINE);
        aim(flight.throughTheAir(steering.tilt(), steering.freeAbove()));
        return recorded(vehicle, steering, FINE, SHORT_STEP);
    }

    private AscentResult recorded(AscentVehicle vehicle, Steering steering, double tolerance, double step) {
        FlightRecorder recorder = new FlightRecorder(mission.planet());
        AscentFlight last = new AscentFlight(vehicle, mission, atmosphere, recorder, tolerance, step);
        last.toOrbit(last.throughTheAir(steering.tilt(), steering.freeAbove()), pitchStart, pitchEnd);
        last.onwards();
        return new AscentSummary(vehicle, mission, last, recorder).result(steering, evaluations + flight.evaluations());
    }

    /**
     * @param vehicle a vehicle
     * @param mission where to
     * @return its thrust at sea level over its weight there (-)
     */
    public static double lift(AscentVehicle vehicle, AscentMission mission) {
        FlightSegment first = vehicle.segments().get(0);
        double mass = vehicle.startMass() - first.spentBefore();
        return first.thrusters().thrustAtIgnition(Constants.STANDARD_ATMOSPHERE) / (mass * gravity(mission));
    }

    private static double gravity(AscentMission mission) {
        return mission.planet().gravitationalParameter()
                / Math.pow(mission.planet().radius(), 2);
    }

    /**
     * @param vehicle a vehicle
     * @param mission where to
     * @throws LimitReached if it does not lift off; the message says which start mass would
     */
    public static void requireLiftOff(AscentVehicle vehicle, AscentMission mission) {
        if (lift(vehicle, mission) > LIFTS) {
            return;
        }
        FlightSegment first = vehicle.segments().get(0);
        double thrust = first.thrusters().thrustAtIgnition(Constants.STANDARD_ATMOSPHERE);
        double gravity = gravity(mission);
        throw new LimitReached(
                "ascent.liftoff",
                String.format(
                        Locale.ROOT,
                        "%s does not lift off: thrust at sea level is %.5g kN, weight %.5g kN; a start mass below %.5g t"
                                + " would rise: take more engines or a lighter vehicle",
                        vehicle.name(),
                        thrust / 1e3,
                        (vehicle.startMass() - first.spentBefore()) * gravity / 1e3,
                        thrust / gravity / LIFTS / 1e3));
    }

    /**
     * Starts the next flights from angles that did.
     *
     * @param aim angles that end a similar flight in its orbit
     */
    public void aimFrom(Arrival.Aim aim) {
        shooting.reset();
        pitchStart = aim.start();
        pitchEnd = aim.end();
    }

    private void forget() {
        shooting.reset();
        pitchStart = GUESSES[0][0];
        pitchEnd = GUESSES[0][1];
    }

    /** Finds the two angles, from those of the last flight or, failing that, from ever steeper ones. */
    private void aim(AscentFlight.Checkpoint from) {
        for (double[] guess : GUESSES) {
            try {
                aimOnce(from);
                return;
            } catch (NotConverged missed) {
                lastFailure = missed;
                shooting.reset();
                pitchStart = guess[0];
                pitchEnd = guess[1];
            }
        }
        try {
            aimOnce(from);
        } catch (NotConverged missed) {
            forget();
            throw missed;
        }
    }

    private void aimOnce(AscentFlight.Checkpoint from) {
        double scale = Math.toRadians(20);
        double[] flown = {Double.NaN, Double.NaN};
        BoundedSystemSolver.Solution solution = shooting.solve(
                List.of(
                        new BoundedSystemSolver.Unknown("first pitch", "rad", -STEEP, STEEP, scale, pitchStart),
                        new BoundedSystemSolver.Unknown("last pitch", "rad", -STEEP, STEEP, scale, pitchEnd)),
                MISSES,
                (x, miss) -> {
                    flown[0] = Double.NaN;
                    flight.toOrbit(from, x[0], x[1]);
                    flown[0] = x[0];
                    flown[1] = x[1];
                    miss(miss);
                },
                MISS);
        pitchStart = solution.values().get(0);
        pitchEnd = solution.values().get(1);
        if (flown[0] != pitchStart || flown[1] != pitchEnd) {
            flight.toOrbit(from, pitchStart, pitchEnd);
        }
    }

    private void miss(double[] miss) {
        flight.dynamics().look(flight.time(), flight.state());
        miss[0] = (flight.dynamics().altitude - mission.insertionAltitude()) / 100e3;
        miss[1] = flight.dynamics().airUp / 1000;
    }
}
