package dev.penstock.vehicle.ascent;

import static dev.penstock.vehicle.ascent.AscentDynamics.IDEAL;
import static dev.penstock.vehicle.ascent.AscentDynamics.IMPULSE;
import static dev.penstock.vehicle.ascent.AscentDynamics.MASS;
import static dev.penstock.vehicle.ascent.AscentDynamics.VX;
import static dev.penstock.vehicle.ascent.AscentDynamics.VY;
import static dev.penstock.vehicle.ascent.AscentDynamics.X;
import static dev.penstock.vehicle.ascent.AscentDynamics.Y;

import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;

/** Keeps what happens on a flight; or nothing at all, on the many flights of a search. Not thread-safe. */
class FlightRecorder {

    /** Keeps nothing. */
    static final FlightRecorder OFF = new FlightRecorder(Planet.EARTH) {
        @Override
        void step(AscentDynamics dynamics, double time, double[] y) {
            // one flight of many
        }

        @Override
        void burntOut(AscentDynamics dynamics, double time, double[] y, double dropped) {
            // one flight of many
        }

        @Override
        void segment(String name) {
            // one flight of many
        }
    };

    private final Planet planet;
    private final List<AscentPoint> points = new ArrayList<>();
    private final List<AscentResult.SegmentFlight> flown = new ArrayList<>();
    private String segment = "";
    private double segmentStart;
    private double impulse;
    private double mass = Double.NaN;
    private double ideal;
    private double fromX;
    private double fromY;

    FlightRecorder(Planet planet) {
        this.planet = planet;
    }

    void segment(String name) {
        if (!name.equals(segment)) {
            segment = name;
            mass = Double.NaN;
        }
    }

    /** Mass that goes overboard unburnt while a part flies (kg). */
    void overboard(double unburnt) {
        mass -= unburnt;
    }

    void note(AscentDynamics dynamics, double time, double[] y) {
        step(dynamics, time, y);
    }

    void step(AscentDynamics dynamics, double time, double[] y) {
        dynamics.look(time, y);
        if (points.isEmpty()) {
            fromX = y[X] / dynamics.radius;
            fromY = y[Y] / dynamics.radius;
        }
        if (Double.isNaN(mass) && dynamics.throttle > 0) {
            segmentStart = time;
            impulse = y[IMPULSE];
            mass = y[MASS];
            ideal = y[IDEAL];
        }
        double turned = Math.atan2(fromX * y[Y] - fromY * y[X], fromX * y[X] + fromY * y[Y]);
        double overGround = turned - dynamics.airRotation() * time;
        points.add(new AscentPoint(
                time,
                segment,
                dynamics.altitude,
                planet.radius() * overGround,
                dynamics.airSpeed,
                Math.hypot(y[VX], y[VY]),
                dynamics.airSpeed > 0 ? Math.atan2(dynamics.airUp, dynamics.airEast) : Math.PI / 2,
                dynamics.pitch,
                y[MASS],
                dynamics.thrust,
                dynamics.throttle,
                dynamics.isp(),
                dynamics.drag,
                dynamics.ambientPressure,
                dynamics.dynamicPressure,
                dynamics.mach,
                (dynamics.thrust - dynamics.drag) / y[MASS]));
    }

    void burntOut(AscentDynamics dynamics, double time, double[] y, double dropped) {
        step(dynamics, time, y);
        double burnt = mass - y[MASS];
        flown.add(new AscentResult.SegmentFlight(
                segment,
                segmentStart,
                time,
                (y[IMPULSE] - impulse) / (burnt * Constants.STANDARD_GRAVITY),
                dynamics.vacuumIsp(),
                y[IDEAL] - ideal,
                dynamics.altitude,
                dynamics.airSpeed,
                dynamics.dynamicPressure,
                dropped));
    }

    /** @return highest free-molecular heat flux from a time (s) on (W/m²) */
    double highestHeatingAfter(double from) {
        double most = 0;
        for (AscentPoint point : points) {
            if (point.time() >= from) {
                most = Math.max(most, point.dynamicPressure() * point.airSpeed());
            }
        }
        return most;
    }

    List<AscentPoint> points() {
        return points;
    }

    List<AscentResult.SegmentFlight> flown() {
        return flown;
    }
}
