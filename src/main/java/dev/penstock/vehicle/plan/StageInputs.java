package dev.penstock.vehicle.plan;

import dev.penstock.input.Belief;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.mass.BodyShape;
import dev.penstock.vehicle.mass.DryMassInputs;
import java.util.List;

/** What a vehicle may say of its stages and boosters. */
public final class StageInputs {

    public static final Input<String> NAME =
            Input.text("name", "Name of the stage").follows("its number");
    public static final Input<String> ENGINE = Input.text("engine", "Concept file of its engine, relative to this file")
            .computed("isp and thrust are stated in its place")
            .example("\"../heron.toml\"");

    // ---- an engine stated by its figures

    /** Thrust over weight of a stated engine whose mass is not: common practice, no source. */
    public static final int USUAL_ENGINE_THRUST_TO_WEIGHT = 70;

    public static final Input<Double> ISP = Input.quantity(
                    "isp",
                    Dimension.TIME,
                    Range.of(10, 2000),
                    "Vacuum impulse of its engine, stated in place of a concept file")
            .computed("by the engine's concept file")
            .example("\"330 s\"");
    public static final Input<Double> THRUST = Input.quantity(
                    "thrust", Dimension.FORCE, Range.POSITIVE, "Vacuum thrust of one stated engine")
            .computed("by the engine's concept file")
            .example("\"500 kN\"");
    public static final Input<Double> EXIT_AREA = Input.quantity(
                    "exit_area",
                    Dimension.AREA,
                    Range.NOT_NEGATIVE,
                    "Nozzle exit area of a stated engine, by which its thrust falls with ambient pressure")
            .usual(Usual.of(0.0, "the same thrust at every height", ""));
    public static final Input<Double> STATED_ENGINE_MASS = Input.quantity(
                    "stated_engine_mass", Dimension.MASS, Range.NOT_NEGATIVE, "Mass of one stated engine")
            .follows("its thrust over " + USUAL_ENGINE_THRUST_TO_WEIGHT + " times standard gravity, " + Usual.COMMON);
    public static final Input<String> OXIDIZER = Input.text("oxidizer", "Oxidizer of a stated engine, a file in fluids")
            .follows("the usual one");
    public static final Input<String> FUEL =
            Input.text("fuel", "Fuel of a stated engine, a file in fluids").follows("the usual one");
    public static final Input<Double> MIXTURE_RATIO = Input.ratio(
                    "mixture_ratio", Range.of(0.01, 100), "Oxidizer over fuel by mass of a stated engine")
            .usual(Usual.common(2.6));
    public static final Input<Double> OXIDIZER_DENSITY = Input.quantity(
                    "oxidizer_density", Dimension.DENSITY, Range.of(10, 5000), "Density of its oxidizer as loaded")
            .computed("as stored");
    public static final Input<Double> FUEL_DENSITY = Input.quantity(
                    "fuel_density", Dimension.DENSITY, Range.of(10, 5000), "Density of its fuel as loaded")
            .computed("as stored");

    private static final Input<?>[] STATED = {
        ISP, THRUST, EXIT_AREA, STATED_ENGINE_MASS, OXIDIZER, FUEL, MIXTURE_RATIO, OXIDIZER_DENSITY, FUEL_DENSITY
    };

    public static final Input<Double> DELTA_V_SHARE = Input.ratio(
                    "delta_v_share", Range.of(0.001, 1), "Its share of the ideal delta-v")
            .computed("the split with the least start mass, by the flight where it is flown");
    public static final Input<Double> DIAMETER = Input.quantity(
                    "diameter", Dimension.LENGTH, Range.of(0.05, 100), "Outer diameter")
            .computed("tanks six diameters long")
            .believed(Belief.factors(0.3, 12));
    public static final Input<List<Double>> ENGINES = Input.quantities(
                    "engines", Dimension.RATIO, Range.of(1, EngineCount.MOST), "Number of engines")
            .computed("as many as thrust_to_weight takes");
    public static final Input<List<Double>> THRUST_TO_WEIGHT = Input.quantities(
                    "thrust_to_weight",
                    Dimension.RATIO,
                    Range.of(0.01, 50),
                    "Thrust over weight at ignition, as many engines as this takes")
            .computed("1.3 for the first stage, 0.8 above, " + Usual.COMMON + "; a flight chooses it");
    public static final Input<Integer> ENGINES_OUT = Input.whole(
                    "engines_out", 0, 20, "Engines that may fail at ignition")
            .usual(Usual.of(0, "none", ""));
    public static final Input<Double> THRUST_TO_WEIGHT_ENGINE_OUT = Input.ratio(
                    "thrust_to_weight_engine_out",
                    Range.of(0, 50),
                    "Thrust over weight at ignition with those engines out")
            .follows("as thrust_to_weight");
    public static final Input<Double> IGNITION_PRESSURE = Input.quantity(
                    "ignition_pressure",
                    Dimension.PRESSURE,
                    Range.of(0, 1.2e5),
                    "Ambient pressure at the ignition of the first stage")
            .usual(Usual.of(Constants.STANDARD_ATMOSPHERE, "standard atmosphere at sea level", ""));

    // ---- allowances

    public static final Input<Double> RESIDUAL = Input.ratio(
                    "residual", Range.of(0, 0.4), "Left in tanks and lines at cut-off over what is loaded")
            .usual(Usual.between(0.0025, 0.01, 0.024, Usual.COMMON));
    public static final Input<Double> STARTUP_TIME = Input.quantity(
                    "startup_time", Dimension.TIME, Range.of(0, 60), "Time of full flow before the stage moves freely")
            .usual(Usual.common(1.0));
    public static final Input<Double> BOIL_OFF = Input.ratio(
                    "boil_off", Range.of(0, 0.4), "Lost by evaporation before ignition over what is loaded")
            .usual(Usual.common(0.0).because("replenished on the pad"));
    public static final Input<Double> ULLAGE = Input.ratio("ullage", Range.of(0, 0.9), "Gas volume over tank volume")
            .usual(Usual.common(0.03));

    public static final Input<Double> HEAT_LEAK = Input.quantity(
                    "heat_leak",
                    Dimension.HEAT_FLUX,
                    Range.of(0, 1e4),
                    "Heat that leaks into cold tanks in a coast, over their surface")
            .usual(Usual.between(15, 50, 150, Usual.COMMON).because("foam of some centimetres; blankets 1 W/m²"));

    public static final InputGroup ALLOWANCES = InputGroup.table(
            "allowances",
            "Propellant and volume that give no speed",
            RESIDUAL,
            STARTUP_TIME,
            BOIL_OFF,
            HEAT_LEAK,
            ULLAGE);

    // ---- recovery

    private static final Range BURNS = Range.of(0, 1e4);
    private static final String BY_MODE = "by where it lands, " + Usual.COMMON;

    public static final Input<Recovery.Mode> MODE = Input.choice("mode", Recovery.Mode.class, "Where the stage lands")
            .usual(Usual.of(Recovery.Mode.NONE, "it is lost", ""));
    public static final Input<Double> BOOSTBACK = Input.quantity(
                    "boostback", Dimension.VELOCITY, BURNS, "Speed change that turns it back")
            .follows(BY_MODE);
    public static final Input<Double> ENTRY = Input.quantity(
                    "entry", Dimension.VELOCITY, BURNS, "Speed change that spares it heat and load")
            .follows(BY_MODE);
    public static final Input<Double> LANDING = Input.quantity(
                    "landing", Dimension.VELOCITY, BURNS, "Speed change on landing")
            .follows(BY_MODE);

    public static final InputGroup RECOVERY =
            InputGroup.table("recovery", "How the stage comes back", MODE, BOOSTBACK, ENTRY, LANDING);

    // ---- body

    public static final Input<BodyShape.Kind> SHAPE = Input.choice("shape", BodyShape.Kind.class, "Shape of the body")
            .usual(Usual.of(BodyShape.Kind.CYLINDER, "a cylinder", ""));
    public static final Input<Double> HEIGHT = Input.quantity(
                    "height", Dimension.LENGTH, Range.of(0.05, 1000), "Height of the body, none for a sphere")
            .computed("the diameter of a sphere");
    public static final Input<Double> BASE_DIAMETER = Input.quantity(
                    "base_diameter", Dimension.LENGTH, Range.of(0.05, 200), "Diameter of the base")
            .example("\"4 m\"");
    public static final Input<Double> TOP_DIAMETER = Input.quantity(
                    "top_diameter", Dimension.LENGTH, Range.of(0, 200), "Diameter of the top of a tapered body")
            .computed("none but for a tapered body");
    public static final Input<Double> FILLING = Input.ratio(
                    "filling", Range.of(0.01, 1), "Share of the body's volume that tanks may take")
            .usual(Usual.common(0.8));

    public static final InputGroup BODY = InputGroup.table(
                    "body",
                    "Body of given shape that the tanks must fit into",
                    SHAPE,
                    HEIGHT,
                    BASE_DIAMETER,
                    TOP_DIAMETER,
                    FILLING)
            .ifWritten();

    // ---- boosters

    public static final Input<Integer> COUNT =
            Input.whole("count", 1, 12, "Number of boosters").usual(Usual.of(2, "a pair", ""));
    public static final Input<Integer> BOOSTER_ENGINES = Input.whole(
                    "engines", 1, EngineCount.MOST, "Engines of each booster")
            .usual(Usual.of(1, "one", ""));
    public static final Input<Double> PROPELLANT = Input.quantity(
                    "propellant", Dimension.MASS, Range.POSITIVE, "Propellant loaded into each booster")
            .example("\"50 t\"");

    public static final Input<List<Double>> THRUST_TIMES = Input.quantities(
                    "thrust_times",
                    Dimension.TIME,
                    Range.of(0, 1000),
                    "Times after ignition of the thrust table of a solid booster, rising from 0 s")
            .computed("the boosters are not solid");
    public static final Input<List<Double>> THRUSTS = Input.quantities(
                    "thrusts",
                    Dimension.FORCE,
                    Range.NOT_NEGATIVE,
                    "Vacuum thrust of one solid booster at these times, straight lines between")
            .computed("the boosters are not solid");

    private StageInputs() {}

    public static InputGroup stage(boolean ownEngine) {
        InputGroup group = InputGroup.table("stage", "One stage, the lowest first", NAME);
        group = ownEngine ? group.and(ENGINE).and(STATED) : group;
        return group.and(
                        DELTA_V_SHARE,
                        DIAMETER,
                        ENGINES,
                        THRUST_TO_WEIGHT,
                        ENGINES_OUT,
                        THRUST_TO_WEIGHT_ENGINE_OUT,
                        IGNITION_PRESSURE)
                .with(ALLOWANCES, RECOVERY, DryMassInputs.GROUP, BODY);
    }

    public static InputGroup boosters(boolean ownEngine) {
        InputGroup group = InputGroup.table("boosters", "Boosters beside the first stage", COUNT);
        group = ownEngine ? group.and(ENGINE).and(STATED) : group.and(ISP, EXIT_AREA);
        return group.and(BOOSTER_ENGINES, PROPELLANT, DIAMETER, THRUST_TIMES, THRUSTS)
                .with(ALLOWANCES, DryMassInputs.GROUP)
                .ifWritten();
    }
}
