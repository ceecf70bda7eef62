package dev.penstock.vehicle.ascent;

import static dev.penstock.vehicle.ascent.AscentDynamics.IDEAL;
import static dev.penstock.vehicle.ascent.AscentDynamics.MASS;
import static dev.penstock.vehicle.ascent.AscentDynamics.SIZE;
import static dev.penstock.vehicle.ascent.AscentDynamics.VX;
import static dev.penstock.vehicle.ascent.AscentDynamics.VY;
import static dev.penstock.vehicle.ascent.AscentDynamics.X;
import static dev.penstock.vehicle.ascent.AscentDynamics.Y;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.NotConverged;
import dev.penstock.numerics.FixedStepIntegrator;
import dev.penstock.numerics.InitialValueSolver;
import dev.penstock.numerics.OdeIntegrator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One flight from release to orbit: up, a small tilt, along the path through the air up to a height, then by a
 * linear-tangent law, as near as the load by angle of attack allows, until the orbital energy is reached. A fairing goes
 * overboard where the free-molecular heating has fallen to its limit. The last segment may burn more than it has, so that a vehicle
 * that falls short still tells by how much. Not thread-safe.
 */
final class AscentFlight {

    /** Speed through the air (m/s) at which the tilt begins. */
    private static final double TILT_AT = 40;
    /** The last segment may burn down to this fraction of its proper final mass. */
    private static final double OVERBURN = 0.25;

    /** Mass by which a part with solid motors may undercut its end by rounding (-): its time ends it. */
    private static final double SOLID_SLACK = 1e-6;
    /** A point of a thrust table nearer than this is behind (s). */
    private static final double KINK = 1e-9;

    /** Longest time a flight takes from release, or from a restart, to its end (s). */
    private static final double LONGEST = 4000;
    /** Longest step of a coast in a parking orbit (s). */
    private static final double COAST_STEP = 30;
    /** What names the burn of a part that burns again. */
    private static final String SECOND_BURN = ", second burn";

    /** Step of a search at the ground (s). */
    private static final double STEP_IN_AIR = 1;

    /** Step of a search above the air (s). */
    private static final double STEP_ABOVE = 10;

    /** Height at which the air no longer matters to the length of a step (m). */
    private static final double THIN_AIR = 100e3;

    /** Most of the mass that one step of a search burns (-). */
    private static final double SHARE_OF_MASS = 0.1;

    private static final double[] TOLERANCE = {1e-2, 1e-2, 1e-5, 1e-5, 1e-3, 1e-4, 1e-3, 1e-4, 1e-4, 1e-4, 1e-4, 1e2};

    private final AscentVehicle vehicle;
    private final AscentMission mission;
    private final AscentDynamics dynamics;
    private final InitialValueSolver integrator;
    private final InitialValueSolver coastIntegrator;
    private final FlightRecorder recorder;

    private double time;
    private final double[] y;
    private int segment;
    private double burnEnd;
    /** What throttled engines beside solid motors have left for the next part (kg). */
    private double unburnt;

    private double coastEnd;
    private double tiltTime;
    private double pathTime;
    private double stageIdeal;
    private double stagingPressure;
    private final List<Parting> partings = new ArrayList<>();
    private boolean fairingAboard;
    private boolean bare;
    private Optional<FairingDrop> fairingDrop = Optional.empty();
    private double legStart;
    private boolean restarted;
    private double insertionTime;
    private Optional<AscentResult.SecondBurn> secondBurn = Optional.empty();

    AscentFlight(
            AscentVehicle vehicle,
            AscentMission mission,
            Atmosphere atmosphere,
            FlightRecorder recorder,
            double relativeTolerance,
            double maxStep) {
        this.vehicle = vehicle;
        this.mission = mission;
        this.recorder = recorder;
        this.dynamics = new AscentDynamics(mission, atmosphere, vehicle.dragTable(), vehicle.referenceArea());
        this.integrator = new OdeIntegrator(what(), TOLERANCE, relativeTolerance, maxStep);
        this.coastIntegrator = new OdeIntegrator(what(), TOLERANCE, relativeTolerance, Math.max(COAST_STEP, maxStep));
        this.y = new double[SIZE];
    }

    /**
     * A flight for searches: the motion alone, in steps that grow with height, so that its end is a smooth function of how it is
     * steered; within some tenths of a metre per second of one with small steps.
     */
    AscentFlight(AscentVehicle vehicle, AscentMission mission, Atmosphere atmosphere) {
        this.vehicle = vehicle;
        this.mission = mission;
        this.recorder = FlightRecorder.OFF;
        this.dynamics = new AscentDynamics(mission, atmosphere, vehicle.dragTable(), vehicle.referenceArea());
        this.integrator = new FixedStepIntegrator(what(), this::step);
        this.coastIntegrator = new FixedStepIntegrator(what(), (t, s) -> COAST_STEP);
        this.y = new double[AscentDynamics.MOTION];
    }

    private String what() {
        return "ascent of " + vehicle.name();
    }

    /** Step of a search (s): short in the air, where forces change with height, and before the mass is gone. */
    private double step(double t, double[] s) {
        double height = Math.hypot(s[X], s[Y]) - mission.planet().radius();
        double x = Math.min(1, Math.max(0, height / THIN_AIR));
        double step = STEP_IN_AIR + (STEP_ABOVE - STEP_IN_AIR) * x * x * (3 - 2 * x);
        double reserve = vehicle.segments().get(segment).thrusters().burnTime(s[MASS]);
        return Math.min(step, SHARE_OF_MASS * reserve);
    }

    /** Where the flight stands, to go on from more than once. */
    record Checkpoint(
            double time,
            List<Double> state,
            int segment,
            double burnEnd,
            double coastEnd,
            double burnLeft,
            double stageIdeal,
            double stagingPressure,
            List<Parting> partings) {}

    /** @return largest dynamic pressure so far where stages parted (Pa) */
    double stagingPressure() {
        return stagingPressure;
    }

    /** @return where each part that burnt out was dropped, lowest first */
    List<Parting> partings() {
        return List.copyOf(partings);
    }

    /** @return where and when the fairing went overboard, if it did before its stage was dropped */
    Optional<FairingDrop> fairingDrop() {
        return fairingDrop;
    }

    /** @return whether a fairing is still there */
    boolean fairingAboard() {
        return fairingAboard;
    }

    /** @return when the ascent ended (s) */
    double insertionTime() {
        return insertionTime;
    }

    /** @return the burn out of the parking orbit, if there was one */
    Optional<AscentResult.SecondBurn> secondBurn() {
        return secondBurn;
    }

    int evaluations() {
        return integrator.evaluations() + coastIntegrator.evaluations();
    }

    AscentDynamics dynamics() {
        return dynamics;
    }

    double[] state() {
        return y;
    }

    double time() {
        return time;
    }

    int segment() {
        return segment;
    }

    /** Flies from the pad with a tilt (rad) soon after release, then along the path up to a height (m). */
    Checkpoint throughTheAir(double tilt, double freeAbove) {
        release();
        dynamics.point(AscentDynamics.Pointing.UPWARDS);
        until((t, s) -> {
            dynamics.look(t, s);
            return dynamics.airSpeed - TILT_AT;
        });
        tiltTime = time;
        dynamics.tilt(tilt);
        until((t, s) -> {
            dynamics.look(t, s);
            return Math.atan2(dynamics.airEast, dynamics.airUp) - tilt;
        });
        pathTime = time;
        dynamics.point(AscentDynamics.Pointing.ALONG_PATH);
        until((t, s) -> Math.hypot(s[X], s[Y]) - mission.planet().radius() - freeAbove);
        List<Double> state = new ArrayList<>();
        for (double value : y) {
            state.add(value);
        }
        return new Checkpoint(
                time, state, segment, burnEnd, coastEnd, burnLeft(), stageIdeal, stagingPressure, partings());
    }

    /** Goes on to the energy at insertion, with these angles of the thrust above the horizon (rad). */
    void toOrbit(Checkpoint from, double pitchStart, double pitchEnd) {
        time = from.time();
        restarted = false;
        for (int i = 0; i < y.length; i++) {
            y[i] = from.state().get(i);
        }
        segment = from.segment();
        burnEnd = from.burnEnd();
        coastEnd = from.coastEnd();
        stageIdeal = from.stageIdeal();
        stagingPressure = from.stagingPressure();
        partings.clear();
        partings.addAll(from.partings());
        fairingAboard = vehicle.fairing().mass() > 0;
        fairingDrop = Optional.empty();
        bare = true;
        dropFairingWhereDue();
        arm();
        double rate = (Math.tan(pitchEnd) - Math.tan(pitchStart)) / from.burnLeft();
        dynamics.tangentLaw(time, Math.tan(pitchStart), rate);
        legStart = 0;
        secondBurn = Optional.empty();
        until((t, s) -> energy(s) - mission.insertionEnergy());
        insertionTime = time;
    }

    /** Coasts in the parking orbit and burns along the motion to the energy of the target, where the mission asks for that. */
    void onwards() {
        if (mission.parkingCoast().isEmpty()) {
            return;
        }
        recorder.burntOut(dynamics, time, y, 0);
        dynamics.point(AscentDynamics.Pointing.ALONG_MOTION);
        coastEnd = time + mission.parkingCoast().getAsDouble();
        legStart = coastEnd;
        double ideal = y[IDEAL];
        restarted = true;
        arm();
        until((t, s) -> energy(s) - mission.finalEnergy());
        secondBurn = Optional.of(new AscentResult.SecondBurn(legStart, time, y[IDEAL] - ideal));
        restarted = false;
    }

    /** How the thrust was pointed on the way to the orbit, after this choice. */
    SteeringLaw steering(Steering choice) {
        return new SteeringLaw(
                TILT_AT,
                tiltTime,
                choice.tilt(),
                pathTime,
                choice.freeAbove(),
                mission.angleLoad(),
                dynamics.tangentEpoch(),
                dynamics.tangentStart(),
                dynamics.tangentRate());
    }

    /** @return time to burn and coast through all that is left, at full flow (s) */
    private double burnLeft() {
        Thrusters now = vehicle.segments().get(segment).thrusters();
        double left = now.solids().isPresent()
                ? Math.max(0, coastEnd + now.burnTime(0) - time)
                : now.burnTime(Math.max(0, y[MASS] - burnEnd));
        for (int i = segment + 1; i < vehicle.segments().size(); i++) {
            FlightSegment next = vehicle.segments().get(i);
            left += next.coast() + next.thrusters().burnTime(next.burn());
        }
        return Math.max(1, left);
    }

    /** Speed gain left in the part that flies now and in those after it (m/s); below zero for what was burnt beyond. */
    double margin() {
        double gain = exhaustVelocity(segment) * Math.log(y[MASS] / burnEnd);
        double left = burnEnd - vehicle.segments().get(segment).droppedAfter();
        for (int i = segment + 1; i < vehicle.segments().size(); i++) {
            FlightSegment next = vehicle.segments().get(i);
            double start = left - next.spentBefore();
            gain += exhaustVelocity(i) * Math.log(start / (start - next.burn()));
            left = start - next.burn() - next.droppedAfter();
        }
        return gain;
    }

    private double exhaustVelocity(int part) {
        return vehicle.segments().get(part).thrusters().exhaustVelocity();
    }

    double energy(double[] s) {
        return 0.5 * (s[VX] * s[VX] + s[VY] * s[VY])
                - mission.planet().gravitationalParameter() / Math.hypot(s[X], s[Y]);
    }

    private void release() {
        time = 0;
        legStart = 0;
        restarted = false;
        java.util.Arrays.fill(y, 0);
        y[X] = mission.planet().radius();
        y[VY] = mission.airRotation() * y[X];
        y[MASS] = vehicle.startMass();
        segment = -1;
        fairingAboard = vehicle.fairing().mass() > 0;
        bare = false;
        stagingPressure = 0;
        partings.clear();
        unburnt = 0;
        nextSegment();
    }

    private void nextSegment() {
        segment++;
        FlightSegment next = vehicle.segments().get(segment);
        if (segment <= vehicle.fairing().from()) {
            stageIdeal = y[IDEAL];
        }
        coastEnd = time + next.coast();
        y[MASS] -= next.spentBefore();
        burnEnd = y[MASS] - next.burn() - unburnt;
        unburnt = 0;
        dropFairingWhereDue();
        arm();
    }

    /** Free-molecular heating over its limit (W/m²) while a fairing waits for that; above zero where none does. */
    private double heatingToWaitFor(double t, double[] s) {
        if (!bare || !fairingAboard || segment < vehicle.fairing().from()) {
            return 1;
        }
        dynamics.look(t, s);
        return dynamics.freeMolecularHeating() - mission.heatingLimit();
    }

    private void dropFairingWhereDue() {
        if (heatingToWaitFor(time, y) <= 0) {
            dropFairing();
        }
    }

    private void dropFairing() {
        dynamics.look(time, y);
        y[MASS] -= vehicle.fairing().mass();
        burnEnd -= vehicle.fairing().mass();
        recorder.overboard(vehicle.fairing().mass());
        fairingAboard = false;
        fairingDrop = Optional.of(new FairingDrop(
                time, dynamics.altitude, dynamics.freeMolecularHeating(), segment, y[IDEAL] - stageIdeal));
    }

    private void arm() {
        if (time < coastEnd) {
            dynamics.coast();
        } else {
            dynamics.burn(vehicle.segments().get(segment).thrusters(), coastEnd);
        }
        recorder.segment(vehicle.segments().get(segment).name() + (restarted ? SECOND_BURN : ""));
    }

    private boolean besideSolids() {
        return vehicle.segments().get(segment).thrusters().solids().isPresent();
    }

    private double solidsEnd() {
        return coastEnd + vehicle.segments().get(segment).thrusters().burnTime(0);
    }

    /** Time of the next point of the thrust table (s), where the thrust has a kink. */
    private double nextOfTable() {
        for (double point : vehicle.segments()
                .get(segment)
                .thrusters()
                .solids()
                .orElseThrow()
                .motor()
                .times()) {
            if (coastEnd + point > time + KINK) {
                return coastEnd + point;
            }
        }
        return solidsEnd();
    }

    private boolean last() {
        return segment == vehicle.segments().size() - 1;
    }

    /** Flies on, dropping stages as they burn out, until the event. */
    private void until(OdeIntegrator.Event goal) {
        while (true) {
            boolean coasting = time < coastEnd;
            boolean solid = besideSolids();
            double floor = last() ? OVERBURN * burnEnd : solid ? (1 - SOLID_SLACK) * burnEnd : burnEnd;
            List<OdeIntegrator.Event> events = List.of(
                    goal,
                    (t, s) -> s[MASS] - floor,
                    (t, s) -> Math.hypot(s[X], s[Y]) - mission.planet().radius() + 10,
                    this::heatingToWaitFor);
            recorder.note(dynamics, time, y);
            OdeIntegrator.Stop stop = (coasting && restarted ? coastIntegrator : integrator)
                    .integrate(
                            dynamics,
                            time,
                            y,
                            coasting ? coastEnd : solid ? nextOfTable() : legStart + LONGEST,
                            events,
                            (t, s) -> recorder.step(dynamics, t, s));
            time = stop.time();
            switch (stop.event()) {
                case 0 -> {
                    recorder.note(dynamics, time, y);
                    return;
                }
                case 1 -> burntOut();
                case 2 -> throw failed("falls back to the ground");
                case 3 -> {
                    recorder.note(dynamics, time, y);
                    dropFairing();
                }
                default -> {
                    if (coasting) {
                        coastEnd = time;
                        arm();
                    } else if (!solid) {
                        throw failed("reaches no orbit");
                    } else if (time >= solidsEnd()) {
                        burntOut();
                    }
                }
            }
        }
    }

    private void burntOut() {
        if (last()) {
            throw failed("has burnt far more than it has and is not in orbit");
        }
        recorder.burntOut(dynamics, time, y, vehicle.segments().get(segment).droppedAfter());
        unburnt = besideSolids() ? Math.max(0, y[MASS] - burnEnd) : 0;
        dynamics.look(time, y);
        stagingPressure = Math.max(stagingPressure, dynamics.dynamicPressure);
        double overGround = Math.atan2(y[Y], y[X]) - dynamics.airRotation() * time;
        partings.add(new Parting(
                dynamics.altitude,
                dynamics.airUp,
                dynamics.airEast,
                mission.planet().radius() * overGround));
        if (fairingAboard && segment == vehicle.fairing().to()) {
            dropFairing();
        }
        y[MASS] -= vehicle.segments().get(segment).droppedAfter();
        restarted = false;
        nextSegment();
    }

    private NotConverged failed(String how) {
        return new NotConverged(what(), evaluations(), 1, "it " + how + " after " + Math.round(time) + " s");
    }
}
