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
import java.util.OptionalDouble;

/**
 * Finds the steering that leaves most mass in a given orbit. For every tilt after release the two angles of the
 * linear-tangent law are found that end level at the insertion height with orbital energy; the tilt is then searched by a
 * coarse scan and Brent's method. Linear-tangent steering is the optimum above the air in constant gravity
 * [lawden-1963]. Not thread-safe.
 */
public final class AscentOptimizer {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.steering",
            "Steering to orbit",
            "tilt after release, along the path to 500 Pa, then tan θ = a − b t; the tilt with most mass in orbit",
            "ascents without a coast before insertion; insertion level",
            "within some 10 m/s of the best steering for stages with thrust above half their weight, by judgement",
            List.of("lawden-1963"));

    private static final double LEAST_TILT = Math.toRadians(0.15);
    private static final double MOST_TILT = Math.toRadians(25);
    private static final int SCAN = 14;
    /** Half width of a search near a known tilt (logarithm of the angle), and its points. */
    private static final double NEAR = 0.4;

    private static final int SCAN_NEAR = 5;
    private static final double STEEP = Math.toRadians(75);
    private static final double MISS = 1e-5;
    private static final double COARSE = 1e-8;
    private static final double FINE = 1e-10;
    /** Longest steps (s): of a search, and of a flight that is shown. */
    private static final double LONG_STEP = 50;

    private static final double SHORT_STEP = 2;

    /** First guesses of the two angles (rad): 25 and -5, 45 and -10, 60 and 0 degrees. */
    private static final double[][] GUESSES = {{0.436, -0.087}, {0.785, -0.175}, {1.047, 0}};

    private static final List<String> MISSES = List.of("insertion height", "level flight");

    private final Atmosphere atmosphere;

    private AscentFlight flight;
    private AscentMission mission;
    private BoundedSystemSolver shooting;
    private double pitchStart;
    private double pitchEnd;
    private PenstockException lastFailure;
    private int searchEvaluations;

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
        prepare(vehicle, target);
        return inDetail(vehicle, search(vehicle, OptionalDouble.empty(), progress));
    }

    /**
     * A flight good to some centimetres per second, without close-set moments: for a vehicle that is still changing.
     *
     * @param vehicle what is flown
     * @param target where to
     * @param likelyTilt tilt of a similar flight (rad), near which the search begins
     * @param progress told how far the search has come
     * @return the flight
     * @throws LimitReached if the vehicle does not lift off, or no steering of this kind reaches the orbit
     */
    public AscentResult estimate(
            AscentVehicle vehicle, AscentMission target, OptionalDouble likelyTilt, FlightProgress progress) {
        prepare(vehicle, target);
        return recorded(vehicle, search(vehicle, likelyTilt, progress), COARSE, LONG_STEP);
    }

    /**
     * @param vehicle what is flown
     * @param target where to
     * @param tilt tilt after release (rad), best or not
     * @return the flight
     * @throws NotConverged if it misses the orbit
     */
    public AscentResult flyWithTilt(AscentVehicle vehicle, AscentMission target, double tilt) {
        prepare(vehicle, target);
        return inDetail(vehicle, tilt);
    }

    private void prepare(AscentVehicle vehicle, AscentMission target) {
        requireLiftOff(vehicle, target);
        mission = target;
        flight = new AscentFlight(vehicle, target, atmosphere, FlightRecorder.OFF, COARSE, LONG_STEP);
        shooting = new BoundedSystemSolver("steering of " + vehicle.name(), 40);
        searchEvaluations = 0;
        forget();
    }

    private double search(AscentVehicle vehicle, OptionalDouble likelyTilt, FlightProgress progress) {
        if (likelyTilt.isPresent()) {
            double at = Math.log(likelyTilt.getAsDouble());
            OptionalDouble near = bestTilt(vehicle, at - NEAR, at + NEAR, SCAN_NEAR, progress);
            if (near.isPresent()) {
                return near.getAsDouble();
            }
        }
        return bestTilt(vehicle, Math.log(LEAST_TILT), Math.log(MOST_TILT), SCAN, progress)
                .orElseThrow(() -> new LimitReached(
                        "ascent.orbit",
                        String.format(
                                Locale.ROOT,
                                "no steering takes %s to %.0f km: %s",
                                vehicle.name(),
                                mission.insertionAltitude() / 1e3,
                                lastFailure == null ? "every tilt misses" : lastFailure.getMessage())));
    }

    private AscentResult inDetail(AscentVehicle vehicle, double tilt) {
        int before = flight.evaluations();
        flight = new AscentFlight(vehicle, mission, atmosphere, FlightRecorder.OFF, FINE, LONG_STEP);
        aim(flight.throughTheAir(tilt));
        searchEvaluations = before;
        return recorded(vehicle, tilt, FINE, SHORT_STEP);
    }

    private AscentResult recorded(AscentVehicle vehicle, double tilt, double tolerance, double step) {
        FlightRecorder recorder = new FlightRecorder(mission.planet());
        AscentFlight last = new AscentFlight(vehicle, mission, atmosphere, recorder, tolerance, step);
        last.toOrbit(last.throughTheAir(tilt), pitchStart, pitchEnd);
        return new AscentSummary(vehicle, mission, last, recorder)
                .result(tilt, pitchStart, pitchEnd, searchEvaluations + flight.evaluations());
    }

    private static void requireLiftOff(AscentVehicle vehicle, AscentMission mission) {
        double pressure = Constants.STANDARD_ATMOSPHERE;
        FlightSegment first = vehicle.segments().get(0);
        double thrust = first.thrusters().thrustAt(pressure);
        double mass = vehicle.startMass() - first.spentBefore();
        double gravity = mission.planet().gravitationalParameter()
                / Math.pow(mission.planet().radius(), 2);
        if (thrust <= 1.02 * mass * gravity) {
            throw new LimitReached(
                    "ascent.liftoff",
                    String.format(
                            Locale.ROOT,
                            "%s does not lift off: thrust at sea level is %.5g kN, weight %.5g kN; a start mass below %.5g t"
                                    + " would rise",
                            vehicle.name(),
                            thrust / 1e3,
                            mass * gravity / 1e3,
                            thrust / gravity / 1.02 / 1e3));
        }
    }

    /** Best tilt (rad) between two logarithms; empty if every one misses, or the best lies at an end of a narrow search. */
    private OptionalDouble bestTilt(AscentVehicle vehicle, double low, double high, int scan, FlightProgress progress) {
        int best = -1;
        double bestMass = 0;
        for (int i = 0; i < scan; i++) {
            double mass = finalMass(Math.exp(low + (high - low) * i / (scan - 1)));
            if (mass > bestMass) {
                best = i;
                bestMass = mass;
            }
            progress.at(0.6 * (i + 1) / scan, "searching the tilt after release");
        }
        if (best < 0 || scan < SCAN && (best == 0 || best == scan - 1)) {
            return OptionalDouble.empty();
        }
        double step = (high - low) / (scan - 1);
        double from = Math.max(low, low + (best - 1) * step);
        double to = Math.min(high, low + (best + 1) * step);
        Minimizer.Minimum minimum =
                Minimizer.between("tilt of " + vehicle.name(), x -> -finalMass(Math.exp(x)), from, to, 1e-4, 60);
        progress.at(0.9, "tilt found");
        finalMass(Math.exp(minimum.point().get(0)));
        return OptionalDouble.of(Math.exp(minimum.point().get(0)));
    }

    /** Mass in orbit (kg) with this tilt (rad); zero if the orbit is missed. */
    private double finalMass(double tilt) {
        try {
            aim(flight.throughTheAir(tilt));
            return flight.state()[AscentDynamics.MASS];
        } catch (NotConverged missed) {
            lastFailure = missed;
            return 0;
        }
    }

    private void forget() {
        shooting.reset();
        pitchStart = GUESSES[0][0];
        pitchEnd = GUESSES[0][1];
    }

    /** Finds the two angles, from those of the last flight or, failing that, from ever steeper ones. */
    private void aim(AscentFlight.Checkpoint thinAir) {
        for (double[] guess : GUESSES) {
            try {
                aimOnce(thinAir);
                return;
            } catch (NotConverged missed) {
                lastFailure = missed;
                shooting.reset();
                pitchStart = guess[0];
                pitchEnd = guess[1];
            }
        }
        try {
            aimOnce(thinAir);
        } catch (NotConverged missed) {
            forget();
            throw missed;
        }
    }

    private void aimOnce(AscentFlight.Checkpoint thinAir) {
        double scale = Math.toRadians(20);
        BoundedSystemSolver.Solution solution = shooting.solve(
                List.of(
                        new BoundedSystemSolver.Unknown("first pitch", "rad", -STEEP, STEEP, scale, pitchStart),
                        new BoundedSystemSolver.Unknown("last pitch", "rad", -STEEP, STEEP, scale, pitchEnd)),
                MISSES,
                (x, miss) -> {
                    flight.toOrbit(thinAir, x[0], x[1]);
                    miss(miss);
                },
                MISS);
        pitchStart = solution.values().get(0);
        pitchEnd = solution.values().get(1);
        flight.toOrbit(thinAir, pitchStart, pitchEnd);
    }

    private void miss(double[] miss) {
        flight.dynamics().look(flight.time(), flight.state());
        miss[0] = (flight.dynamics().altitude - mission.insertionAltitude()) / 100e3;
        miss[1] = flight.dynamics().airUp / 1000;
    }
}
