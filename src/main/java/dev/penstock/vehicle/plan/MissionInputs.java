package dev.penstock.vehicle.plan;

import dev.penstock.input.Belief;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.InputKind;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.ascent.AscentMission;
import java.util.List;

/** What a vehicle may say of where it goes and how it flies there. */
public final class MissionInputs {

    private static final Range SPEED = Range.of(1, 1e5);

    /** An orbit above this is entered by way of an ellipse that starts here (m). */
    public static final Usual<Double> INSERTION = Usual.common(200e3);

    public static final Input<Double> DELTA_V = Input.quantity(
                    "delta_v", Dimension.VELOCITY, SPEED, "The whole ideal delta-v")
            .computed("from the orbit and the ascent losses")
            .believed(Belief.differences(9000, 9700))
            .example("\"9400 m/s\"");
    public static final Input<Double> ORBITAL_SPEED = Input.quantity(
                    "orbital_speed", Dimension.VELOCITY, SPEED, "Speed in the orbit")
            .computed("from its height");
    public static final Input<Double> ORBIT_ALTITUDE = Input.quantity(
                    "orbit_altitude", Dimension.LENGTH, Range.of(100e3, 1e9), "Height of the circular orbit")
            .computed("not known where the speed is given");
    public static final Input<Double> PERIGEE_ALTITUDE = Input.quantity(
                    "perigee_altitude", Dimension.LENGTH, Range.of(100e3, 1e9), "Lowest height of an elliptic orbit")
            .computed("not known where a circular orbit or another target is given");
    public static final Input<Double> APOGEE_ALTITUDE = Input.quantity(
                    "apogee_altitude", Dimension.LENGTH, Range.of(100e3, 1e9), "Highest height of an elliptic orbit")
            .computed("not known where a circular orbit or another target is given");
    public static final Input<Double> C3 = Input.quantity(
                    "c3",
                    Dimension.SPECIFIC_ENERGY,
                    Range.of(0, 5e8),
                    "Characteristic energy of an escape, the square of the speed left far away, such as \"10 km²/s²\"")
            .computed("not known where an orbit is given");
    public static final Input<Boolean> SUN_SYNCHRONOUS = Input.flag(
                    "sun_synchronous",
                    "Whether the plane of the orbit turns with the sun, so that its inclination follows")
            .usual(Usual.of(false, "no", ""));
    public static final Input<Double> PARKING_COAST = Input.quantity(
                    "parking_coast",
                    Dimension.TIME,
                    Range.of(0, 12 * 3600),
                    "Time without thrust in a circular parking orbit at the insertion altitude, before a second burn")
            .computed("direct: one burn ends on the way to the target");
    public static final Input<Double> INSERTION_ALTITUDE = Input.quantity(
                    "insertion_altitude",
                    Dimension.LENGTH,
                    Range.of(100e3, 2e6),
                    "Height at which the ascent ends, at most the perigee of the orbit")
            .follows("200 km, or the orbit where that is lower, the perigee of an elliptic orbit up to 300 km, "
                    + Usual.COMMON + "; a flight chooses it by its heating limit, except at such a perigee");

    /** An elliptic orbit of a perigee up to this is entered there (m). */
    public static final double DIRECT_PERIGEE = 300e3;

    public static final Input<Double> LATITUDE = Input.quantity(
                    "latitude", Dimension.ANGLE, Range.of(-1.5708, 1.5708), "Latitude of the launch site")
            .computed("the rotation of the Earth does not count");
    public static final Input<Double> INCLINATION = Input.quantity(
                    "inclination", Dimension.ANGLE, Range.of(0, Math.PI), "Inclination of the orbit")
            .computed("that of the launch site's latitude, or of a sun-synchronous orbit");
    public static final Input<Double> DEORBIT = Input.quantity(
                    "deorbit", Dimension.VELOCITY, Range.of(0, 1e4), "Speed change kept for leaving the orbit")
            .computed("none");
    public static final Input<Double> RESERVE_FRACTION = Input.ratio(
                    "reserve_fraction", Range.of(0, 0.2), "Speed kept as a reserve over the whole")
            .follows("1 % of the way to an orbit, else none, " + Usual.COMMON);

    public static final Input<Double> DRAG_FACTOR = Input.ratio(
                    "drag_factor", Range.of(0.05, 5), "Drag loss over the one stated or usual; a flight finds its own")
            .usual(Usual.between(0.3, 1, 1.7, Usual.COMMON));
    public static final Input<Double> LOSS_FACTOR = Input.ratio(
                    "loss_factor",
                    Range.of(0.05, 5),
                    "Other losses of the ascent over those stated or usual; a flight finds its own")
            .usual(Usual.between(0.65, 1, 1.35, Usual.COMMON));

    /** What says where it goes and how that is entered. */
    static final List<Input<Double>> TARGETS =
            List.of(ORBIT_ALTITUDE, PERIGEE_ALTITUDE, APOGEE_ALTITUDE, C3, INSERTION_ALTITUDE, PARKING_COAST);

    private static final InputKind<Double> LOSS = new InputKind.Quantity(Dimension.VELOCITY, Range.of(-1e4, 1e4));

    /** Losses by names of the file's own. */
    public static final InputGroup LOSSES =
            InputGroup.free("losses", "Speed lost in the ascent, by names of your own", LOSS);

    public static final InputGroup MISSION = InputGroup.table(
                    "mission",
                    "Where it goes: delta_v, or an orbit with the ascent losses to it",
                    DELTA_V,
                    ORBITAL_SPEED,
                    ORBIT_ALTITUDE,
                    PERIGEE_ALTITUDE,
                    APOGEE_ALTITUDE,
                    C3,
                    SUN_SYNCHRONOUS,
                    INSERTION_ALTITUDE,
                    PARKING_COAST,
                    LATITUDE,
                    INCLINATION,
                    DEORBIT,
                    DRAG_FACTOR,
                    LOSS_FACTOR,
                    RESERVE_FRACTION)
            .with(LOSSES);

    public static final Input<Double> DYNAMIC_PRESSURE_LIMIT = Input.quantity(
                    "dynamic_pressure_limit", Dimension.PRESSURE, Range.of(1e3, 1e6), "Highest dynamic pressure")
            .usual(Usual.common(35e3));
    public static final Input<Double> ACCELERATION_LIMIT = Input.quantity(
                    "acceleration_limit", Dimension.ACCELERATION, Range.of(12, 500), "Highest acceleration")
            .usual(Usual.common(50.0));
    public static final Input<Double> STAGING_PRESSURE_LIMIT = Input.quantity(
                    "staging_pressure_limit",
                    Dimension.PRESSURE,
                    Range.of(1, 1e6),
                    "Highest dynamic pressure at which stages part")
            .usual(Usual.common(3e3));
    public static final Input<Double> MINIMUM_THROTTLE = Input.ratio(
                    "minimum_throttle", Range.of(0.1, 1), "Lowest thrust of an engine over its full thrust")
            .usual(Usual.common(0.5));
    public static final Input<Double> HEATING_LIMIT = Input.quantity(
                    "heating_limit",
                    Dimension.HEAT_FLUX,
                    Range.of(10, 1e5),
                    "Free-molecular heating half density times speed cubed at which the fairing goes overboard, and which the"
                            + " bare payload bears")
            .usual(Usual.common(AscentMission.USUAL_HEATING));
    public static final Input<Double> ANGLE_LOAD_LIMIT = Input.quantity(
                    "angle_load_limit",
                    Dimension.PRESSURE,
                    Range.of(1, 1e5),
                    "Highest dynamic pressure times angle of attack in radians by steering")
            .usual(Usual.common(AscentMission.USUAL_ANGLE_LOAD).because("20 kPa deg, what winds leave"));
    public static final Input<Double> STAGE_COAST = Input.quantity(
                    "stage_coast", Dimension.TIME, Range.of(0, 600), "Time without thrust between stages")
            .usual(Usual.common(5.0));
    public static final Input<List<Double>> MACH = Input.quantities(
                    "mach", Dimension.RATIO, Range.of(0, 100), "Mach numbers of the drag curve, rising")
            .computed("usual drag of a launcher");
    public static final Input<List<Double>> DRAG_COEFFICIENT = Input.quantities(
                    "drag_coefficient", Dimension.RATIO, Range.of(0, 10), "Drag coefficient at each Mach number")
            .computed("usual drag of a launcher");

    public static final InputGroup ASCENT = InputGroup.table(
            "ascent",
            "What the flight must not exceed, and the drag",
            DYNAMIC_PRESSURE_LIMIT,
            ACCELERATION_LIMIT,
            STAGING_PRESSURE_LIMIT,
            MINIMUM_THROTTLE,
            HEATING_LIMIT,
            ANGLE_LOAD_LIMIT,
            STAGE_COAST,
            MACH,
            DRAG_COEFFICIENT);

    private MissionInputs() {}

    public static Input<Double> loss(String name) {
        return new Input<>(
                name,
                "Speed lost to " + name.replace('_', ' '),
                LOSS,
                Input.Silence.COMPUTED,
                java.util.Optional.empty(),
                "",
                java.util.Optional.empty(),
                "",
                java.util.Optional.empty());
    }
}
