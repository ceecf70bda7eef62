package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Draws the result out of a flight that has reached its orbit. */
final class AscentSummary {

    /** What throttling by a proportional band leaves of a limit (-). */
    private static final double SHOWN = 1e-3;

    private final AscentVehicle vehicle;
    private final AscentMission mission;
    private final AscentFlight flight;
    private final FlightRecorder recorder;

    AscentSummary(AscentVehicle vehicle, AscentMission mission, AscentFlight flight, FlightRecorder recorder) {
        this.vehicle = vehicle;
        this.mission = mission;
        this.flight = flight;
        this.recorder = recorder;
    }

    AscentResult result(Steering choice, int evaluations) {
        double[] y = flight.state();
        AscentDynamics dynamics = flight.dynamics();
        recorder.burntOut(dynamics, flight.time(), y, 0);
        dynamics.look(flight.time(), y);
        double margin = flight.margin();
        List<LimitCheck> limits = limits();
        double burnt = vehicle.startMass() - y[AscentDynamics.MASS] - notBurnt();
        return new AscentResult(
                vehicle,
                mission,
                flight.steering(choice),
                flight.insertionTime(),
                flight.secondBurn(),
                reached(y),
                y[AscentDynamics.MASS],
                margin,
                y[AscentDynamics.IDEAL],
                y[AscentDynamics.GRAVITY],
                y[AscentDynamics.DRAG],
                y[AscentDynamics.STEERING],
                y[AscentDynamics.BACK_PRESSURE],
                dynamics.airSpeed,
                Math.hypot(y[AscentDynamics.VX], y[AscentDynamics.VY]),
                y[AscentDynamics.IMPULSE] / (burnt * Constants.STANDARD_GRAVITY),
                recorder.flown(),
                recorder.points(),
                limits,
                warnings(margin, limits),
                flight.fairingDrop(),
                evaluations + flight.evaluations());
    }

    /** The orbit, or way out, of a place and speed: a = −μ/2E, e² = 1 + 2 E h²/μ² [curtis-2014]. */
    private Target reached(double[] y) {
        double mu = mission.planet().gravitationalParameter();
        double energy = flight.energy(y);
        if (energy >= 0) {
            return new Target.Escape(2 * energy);
        }
        double momentum = y[AscentDynamics.X] * y[AscentDynamics.VY] - y[AscentDynamics.Y] * y[AscentDynamics.VX];
        double eccentricity = Math.sqrt(Math.max(0, 1 + 2 * energy * momentum * momentum / (mu * mu)));
        double axis = -mu / (2 * energy);
        return new Target.Orbit(
                axis * (1 - eccentricity) - mission.planet().radius(),
                axis * (1 + eccentricity) - mission.planet().radius());
    }

    /** Mass gone by the end without having been burnt for thrust (kg). */
    private double notBurnt() {
        double sum = 0;
        for (int i = 0; i <= flight.segment(); i++) {
            sum += vehicle.segments().get(i).spentBefore();
            sum += i < flight.segment() ? vehicle.segments().get(i).droppedAfter() : 0;
        }
        sum += flight.fairingAboard() ? 0 : vehicle.fairing().mass();
        return sum;
    }

    private List<LimitCheck> limits() {
        double q = recorder.points().stream()
                .mapToDouble(AscentPoint::dynamicPressure)
                .max()
                .orElse(0);
        double a = recorder.points().stream()
                .mapToDouble(AscentPoint::acceleration)
                .max()
                .orElse(0);
        double staging = recorder.flown().stream()
                .limit(recorder.flown().size() - 1L)
                .mapToDouble(AscentResult.SegmentFlight::dynamicPressure)
                .max()
                .orElse(0);
        double heating = vehicle.fairing().mass() > 0 && !flight.fairingAboard()
                ? recorder.highestHeatingAfter(
                        flight.fairingDrop().map(FairingDrop::time).orElse(0.0))
                : recorder.highestHeatingAfter(flight.insertionTime());
        return List.of(
                LimitCheck.atMost(
                        AscentLimit.FREE_MOLECULAR_HEATING,
                        "ascent",
                        heating,
                        mission.heatingLimit(),
                        "W/m²",
                        "mission of the vehicle"),
                LimitCheck.atMost(
                        AscentLimit.STAGING_DYNAMIC_PRESSURE,
                        "ascent",
                        staging,
                        mission.stagingPressureLimit(),
                        "Pa",
                        "mission of the vehicle"),
                LimitCheck.atMost(
                        AscentLimit.DYNAMIC_PRESSURE,
                        "ascent",
                        q,
                        mission.dynamicPressureLimit(),
                        "Pa",
                        "mission of the vehicle"),
                LimitCheck.atMost(
                        AscentLimit.ACCELERATION,
                        "ascent",
                        a,
                        mission.accelerationLimit(),
                        "m/s²",
                        "mission of the vehicle"));
    }

    private Warning missed(LimitCheck limit) {
        return new Warning(
                "ascent",
                String.format(
                        Locale.ROOT,
                        "%s misses its limit: %s is %.4g %s, %s %.4g %s allowed",
                        vehicle.name(),
                        limit.kind().key().replace('_', ' '),
                        limit.value(),
                        limit.unit(),
                        limit.upper() ? "at most" : "at least",
                        limit.limit(),
                        limit.unit()));
    }

    private List<Warning> warnings(double margin, List<LimitCheck> limits) {
        List<Warning> warnings = new ArrayList<>();
        limits.stream().filter(limit -> limit.margin() < -SHOWN).forEach(limit -> warnings.add(missed(limit)));
        if (margin < -1) {
            warnings.add(new Warning(
                    "ascent",
                    String.format(
                            Locale.ROOT,
                            "%s falls %.0f m/s short of the orbit; the flight shown goes on with propellant it does not"
                                    + " have",
                            vehicle.name(),
                            -margin)));
        }
        return warnings;
    }
}
