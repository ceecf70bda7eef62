package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import java.util.List;
import java.util.Optional;

/**
 * A flight to orbit.
 *
 * @param vehicle what was flown
 * @param mission where to
 * @param steering how the thrust was pointed
 * @param insertionTime time at which the ascent ends (s)
 * @param secondBurn the burn out of the parking orbit, if there is one
 * @param reached the orbit at the end, or the way out
 * @param finalMass mass in orbit, unburnt propellant of the last stage included (kg)
 * @param margin delta-v left in the stages (m/s); negative if the orbit is beyond them, by that much
 * @param idealDeltaV delta-v by vacuum thrust alone (m/s)
 * @param gravityLoss speed lost to gravity, net of the centrifugal part in the turning frame (m/s)
 * @param dragLoss speed lost to drag (m/s)
 * @param steeringLoss speed lost by thrust not along the path (m/s)
 * @param backPressureLoss speed lost by thrust below vacuum thrust (m/s)
 * @param airSpeed speed through the turning air at the end (m/s)
 * @param inertialSpeed speed in orbit (m/s)
 * @param meanIsp impulse delivered over weight burnt (s): what a fixed figure would have to be
 * @param segments the parts of the flight as flown
 * @param points the flight, moment by moment
 * @param limits limits held against their values
 * @param warnings what the reader must know
 * @param fairingDrop where the fairing goes overboard; empty if there is none or it stays
 * @param evaluations evaluations of the equations of motion, search included
 */
public record AscentResult(
        AscentVehicle vehicle,
        AscentMission mission,
        SteeringLaw steering,
        double insertionTime,
        Optional<SecondBurn> secondBurn,
        Target reached,
        double finalMass,
        double margin,
        double idealDeltaV,
        double gravityLoss,
        double dragLoss,
        double steeringLoss,
        double backPressureLoss,
        double airSpeed,
        double inertialSpeed,
        double meanIsp,
        List<SegmentFlight> segments,
        List<AscentPoint> points,
        List<LimitCheck> limits,
        List<Warning> warnings,
        Optional<FairingDrop> fairingDrop,
        int evaluations) {

    /**
     * A part of the flight as flown.
     *
     * @param name its name
     * @param ignition time its engines start (s)
     * @param cutOff time they stop (s)
     * @param meanIsp impulse delivered over weight burnt (s)
     * @param vacuumIsp vacuum specific impulse (s)
     * @param idealDeltaV delta-v by vacuum thrust alone (m/s)
     * @param altitude height at cut-off (m)
     * @param airSpeed speed through the air at cut-off (m/s)
     * @param dynamicPressure dynamic pressure at cut-off (Pa)
     * @param dropped mass dropped then (kg)
     */
    public record SegmentFlight(
            String name,
            double ignition,
            double cutOff,
            double meanIsp,
            double vacuumIsp,
            double idealDeltaV,
            double altitude,
            double airSpeed,
            double dynamicPressure,
            double dropped) {}

    /**
     * A burn out of the parking orbit.
     *
     * @param ignition time its engines start (s)
     * @param cutOff time they stop (s)
     * @param idealDeltaV delta-v by vacuum thrust alone (m/s)
     */
    public record SecondBurn(double ignition, double cutOff, double idealDeltaV) {}

    public AscentResult {
        Require.positive("ascent", "final mass (kg)", finalMass);
        Require.finite("ascent", "margin (m/s)", margin);
        segments = List.copyOf(segments);
        points = List.copyOf(points);
        limits = List.copyOf(limits);
        warnings = List.copyOf(warnings);
    }

    /** @return tilt after release (rad) */
    public double tilt() {
        return steering.tilt();
    }

    /** @return height from which the thrust need not point along the path (m) */
    public double freeAbove() {
        return steering.freeAbove();
    }

    /** @return what was chosen of the steering; the rest follows from the orbit */
    public Steering choice() {
        return new Steering(tilt(), freeAbove());
    }

    /**
     * @return what the turning air adds to the speed through it at the end (m/s): the air's own speed where the path is horizontal,
     *     less where it climbs
     */
    public double rotationCredit() {
        return inertialSpeed - airSpeed;
    }

    /** @return sum of the losses (m/s): ideal delta-v less the speed through the air at the end */
    public double losses() {
        return gravityLoss + dragLoss + steeringLoss + backPressureLoss;
    }

    /** @return highest dynamic pressure met (Pa) */
    public double maxDynamicPressure() {
        return points.stream().mapToDouble(AscentPoint::dynamicPressure).max().orElse(0);
    }

    /** @return highest acceleration by thrust and drag (m/s²) */
    public double maxAcceleration() {
        return points.stream().mapToDouble(AscentPoint::acceleration).max().orElse(0);
    }
}
