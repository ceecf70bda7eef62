package dev.penstock.vehicle;

import static dev.penstock.provenance.Place.Role.BEFORE;
import static dev.penstock.provenance.Place.values;
import static dev.penstock.quantities.Notation.fixed;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.quantities.Notation;
import dev.penstock.vehicle.ascent.AscentDynamics;
import dev.penstock.vehicle.ascent.AscentOptimizer;
import dev.penstock.vehicle.ascent.AscentPoint;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.FairingDrop;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.stage.RocketEquation;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a flight to orbit and the way back of a stage publish. */
public final class FlightFigures {

    private static final Notation SPEED = fixed("m/s", "m/s", 1, 1);
    private static final Notation WHOLE_SPEED = fixed("m/s", "m/s", 1, 0);
    private static final Notation ISP = fixed("s", "s", 1, 1);
    private static final Notation TIME = fixed("s", "s", 1, 1);
    private static final Notation WHOLE_TIME = fixed("s", "s", 1, 0);
    private static final Notation C3 = significant("m²/s²", "km²/s²", 1e-6, 4);
    private static final Notation HEIGHT = fixed("m", "km", 1e-3, 1);
    private static final Notation KILOPASCAL = significant("Pa", "kPa", 1e-3, 3);
    private static final Notation ACCELERATION = fixed("m/s²", "m/s²", 1, 1);
    private static final Notation ANGLE = new Notation("rad", "deg", angle -> fixed(Math.toDegrees(angle), 2));

    /** Figures of a part of the flight. */
    public static final FigureTable<AscentResult.SegmentFlight> SEGMENTS = FigureTable.named(
                    AscentResult.SegmentFlight::name)
            .word("name", "part", AscentResult.SegmentFlight::name)
            .number("ignition_s", "from", TIME, AscentResult.SegmentFlight::ignition)
            .number("cut_off_s", "to", TIME, AscentResult.SegmentFlight::cutOff)
            .number("isp_mean_s", "mean Isp", ISP, AscentResult.SegmentFlight::meanIsp)
            .number("isp_vacuum_s", "vacuum Isp", ISP, AscentResult.SegmentFlight::vacuumIsp)
            .number("ideal_delta_v_m_s", "ideal gain", WHOLE_SPEED, AscentResult.SegmentFlight::idealDeltaV)
            .number("altitude_m", "altitude", HEIGHT, AscentResult.SegmentFlight::altitude)
            .number("air_speed_m_s", "air speed", WHOLE_SPEED, AscentResult.SegmentFlight::airSpeed)
            .number("dynamic_pressure_Pa", "dynamic pressure", KILOPASCAL, AscentResult.SegmentFlight::dynamicPressure)
            .table();

    /** Figures of an instant. */
    public static final FigureTable<AscentPoint> POINTS = FigureTable.<AscentPoint>ofOne()
            .number("time_s", "time", TIME, AscentPoint::time)
            .word("part", "part of the flight", AscentPoint::segment)
            .number("altitude_m", "altitude", HEIGHT, AscentPoint::altitude)
            .number("downrange_m", "downrange", HEIGHT, AscentPoint::downrange)
            .number("air_speed_m_s", "air speed", SPEED, AscentPoint::airSpeed)
            .number("inertial_speed_m_s", "speed against the stars", SPEED, AscentPoint::inertialSpeed)
            .number("path_angle_rad", "path", ANGLE, AscentPoint::pathAngle)
            .number("pitch_rad", "thrust direction", ANGLE, AscentPoint::pitch)
            .number("mass_kg", "mass", Notation.TONNES, AscentPoint::mass)
            .number("thrust_N", "thrust", Notation.FORCE, AscentPoint::thrust)
            .number("throttle", "throttle", Notation.PERCENT, AscentPoint::throttle)
            .number("isp_s", "Isp", ISP, AscentPoint::isp)
            .number("drag_N", "drag", Notation.FORCE, AscentPoint::drag)
            .number("ambient_pressure_Pa", "ambient pressure", Notation.PRESSURE, AscentPoint::ambientPressure)
            .number("dynamic_pressure_Pa", "dynamic pressure", KILOPASCAL, AscentPoint::dynamicPressure)
            .number("mach", "Mach number", significant("", 3), AscentPoint::mach)
            .number("acceleration_m_s2", "acceleration", ACCELERATION, AscentPoint::acceleration)
            .table();

    /** Figures of a flight as a whole. */
    public static final FigureTable<AscentResult> FLIGHT = FigureTable.<AscentResult>ofOne()
            .number("insertion_altitude_m", "altitude of insertion", HEIGHT, a -> a.mission()
                    .insertionAltitude())
            .optional("apogee_altitude_m", "altitude of the apogee", HEIGHT, a -> a.mission()
                    .target()
                    .highest())
            .leftOutIfAbsent()
            .optional(
                    "c3_m2_s2",
                    "characteristic energy",
                    C3,
                    a -> a.mission().target() instanceof Target.Escape escape
                            ? Optional.of(escape.c3())
                            : Optional.empty())
            .leftOutIfAbsent()
            .optional("parking_coast_s", "coast in the parking orbit", WHOLE_TIME, a -> a.mission()
                    .parkingCoast())
            .leftOutIfAbsent()
            .optional("second_burn_s", "second burn at", WHOLE_TIME, a -> a.secondBurn()
                    .map(AscentResult.SecondBurn::ignition))
            .by(AscentDynamics.CARD, values(BEFORE))
            .leftOutIfAbsent()
            .optional("second_burn_ideal_delta_v_m_s", "ideal gain of the second burn", SPEED, a -> a.secondBurn()
                    .map(AscentResult.SecondBurn::idealDeltaV))
            .by(AscentDynamics.CARD, values(BEFORE))
            .leftOutIfAbsent()
            .optional("second_burn_end_s", "end of the second burn", WHOLE_TIME, a -> a.secondBurn()
                    .map(AscentResult.SecondBurn::cutOff))
            .by(AscentDynamics.CARD, values(BEFORE))
            .leftOutIfAbsent()
            .optional("perigee_reached_m", "perigee reached", HEIGHT, a -> reached(a)
                    .map(Target.Orbit::perigee))
            .by(AscentDynamics.CARD, values(BEFORE))
            .leftOutIfAbsent()
            .optional("apogee_reached_m", "apogee reached", HEIGHT, a -> reached(a)
                    .map(Target.Orbit::apogee))
            .by(AscentDynamics.CARD, values(BEFORE))
            .leftOutIfAbsent()
            .number("insertion_time_s", "time to orbit", fixed("s", "s", 1, 0), AscentResult::insertionTime)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("inertial_speed_m_s", "speed in orbit", SPEED, AscentResult::inertialSpeed)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("final_mass_kg", "mass in orbit", Notation.TONNES, AscentResult::finalMass)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("delta_v_left_m_s", "left in the stages", SPEED, AscentResult::margin)
            .by(RocketEquation.CARD, values(BEFORE))
            .number("ideal_delta_v_m_s", "ideal delta-v", SPEED, AscentResult::idealDeltaV)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("gravity_loss_m_s", "gravity loss", SPEED, AscentResult::gravityLoss)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("drag_loss_m_s", "drag loss", SPEED, AscentResult::dragLoss)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("steering_loss_m_s", "steering loss", SPEED, AscentResult::steeringLoss)
            .by(AscentOptimizer.CARD, values(BEFORE))
            .number("back_pressure_loss_m_s", "back-pressure loss", SPEED, AscentResult::backPressureLoss)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("rotation_credit_m_s", "what the turning air adds", SPEED, AscentResult::rotationCredit)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("isp_mean_s", "mean specific impulse", ISP, AscentResult::meanIsp)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("free_above_m", "free steering above", HEIGHT, AscentResult::freeAbove)
            .by(AscentOptimizer.CARD, values(BEFORE))
            .optional("fairing_overboard_s", "fairing overboard at", TIME, a -> a.fairingDrop()
                    .map(FairingDrop::time))
            .by(AscentDynamics.CARD, values(BEFORE))
            .leftOutIfAbsent()
            .optional("fairing_overboard_m", "fairing overboard, altitude", HEIGHT, a -> a.fairingDrop()
                    .map(FairingDrop::altitude))
            .by(AscentDynamics.CARD, values(BEFORE))
            .leftOutIfAbsent()
            .optional(
                    "fairing_overboard_heating_W_m2",
                    "fairing overboard, free-molecular heating",
                    significant("W/m²", 3),
                    a -> a.fairingDrop().map(FairingDrop::heating))
            .by(AscentDynamics.CARD, values(BEFORE))
            .leftOutIfAbsent()
            .number("tilt_rad", "tilt after release", ANGLE, AscentResult::tilt)
            .by(AscentOptimizer.CARD, values(BEFORE))
            .number("dynamic_pressure_max_Pa", "highest dynamic pressure", KILOPASCAL, AscentResult::maxDynamicPressure)
            .by(AscentDynamics.CARD, values(BEFORE))
            .number("acceleration_max_m_s2", "highest acceleration", ACCELERATION, AscentResult::maxAcceleration)
            .by(AscentDynamics.CARD, values(BEFORE))
            .table();

    /** Figures of the way back of a stage. */
    public static final FigureTable<StageReturn> RETURN = FigureTable.<StageReturn>ofOne()
            .word("stage", "stage", StageReturn::stage)
            .number(
                    "speed_before_entry_burn_m_s",
                    "speed before the entry burn",
                    WHOLE_SPEED,
                    StageReturn::speedBeforeEntryBurn)
            .number("heat_flux_peak_W_m2", "highest heat flux", significant("W/m²", "kW/m²", 1e-3, 3), b -> b.entry()
                    .peakHeatFlux())
            .number("heat_load_J_m2", "heat load", significant("J/m²", "MJ/m²", 1e-6, 3), b -> b.entry()
                    .heatLoad())
            .number("dynamic_pressure_peak_Pa", "highest dynamic pressure", KILOPASCAL, b -> b.entry()
                    .peakDynamicPressure())
            .number("deceleration_peak_m_s2", "highest deceleration", ACCELERATION, b -> b.entry()
                    .peakDeceleration())
            .number("terminal_speed_m_s", "terminal speed at the ground", WHOLE_SPEED, b -> b.entry()
                    .terminalSpeed())
            .number("ballistic_coefficient_kg_m2", "ballistic coefficient", significant("kg/m²", 3), b -> b.entry()
                    .body()
                    .ballisticCoefficient(0))
            .number("boostback_delta_v_m_s", "speed change to turn back", WHOLE_SPEED, StageReturn::boostbackDeltaV)
            .number("landing_delta_v_m_s", "speed change to land", WHOLE_SPEED, StageReturn::landingDeltaV)
            .each("warnings", StageReturn::warnings, CheckFigures.WARNINGS)
            .table();

    /** A limit of a flight. */
    private static final FigureTable<LimitCheck> LIMITS = CheckFigures.LIMITS.without("bound", "margin");

    private static final int DOCUMENTED_POINTS = 200;

    /** A flight with its parts and the vehicle's rounds. */
    public static final FigureTable<FlownSizing> FLOWN = FigureTable.<FlownSizing>ofOne()
            .with(FLIGHT, FlownSizing::ascent)
            .count("rounds", "rounds of sizing and flight", FlownSizing::rounds)
            .each("segments", f -> f.ascent().segments(), SEGMENTS)
            .each("limits", f -> f.ascent().limits(), LIMITS)
            .each("warnings", f -> f.ascent().warnings(), CheckFigures.WARNINGS)
            .each("points", f -> thinned(f.ascent().points()), POINTS)
            .table();

    private FlightFigures() {}

    private static Optional<Target.Orbit> reached(AscentResult flight) {
        return flight.reached() instanceof Target.Orbit orbit ? Optional.of(orbit) : Optional.empty();
    }

    /**
     * @param points a flight, moment by moment
     * @return as many of them as documents hold, ends included
     */
    public static List<AscentPoint> thinned(List<AscentPoint> points) {
        int every = Math.max(1, points.size() / DOCUMENTED_POINTS);
        int last = points.size() - 1;
        return IntStream.rangeClosed(0, last)
                .filter(i -> i % every == 0 || i == last)
                .mapToObj(points::get)
                .toList();
    }
}
