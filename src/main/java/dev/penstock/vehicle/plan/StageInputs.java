package dev.penstock.vehicle.plan;

import dev.penstock.input.Belief;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.mass.DryMassInputs;
import java.util.List;

/** What a vehicle may say of its stages and boosters. */
public final class StageInputs {

    public static final Input<String> NAME =
            Input.text("name", "Name of the stage").follows("its number");
    public static final Input<String> ENGINE = Input.text("engine", "Concept file of its engine, relative to this file")
            .example("\"../heron.toml\"");
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
            .usual(Usual.common(0.01));
    public static final Input<Double> STARTUP_TIME = Input.quantity(
                    "startup_time", Dimension.TIME, Range.of(0, 60), "Time of full flow before the stage moves freely")
            .usual(Usual.common(1.0));
    public static final Input<Double> BOIL_OFF = Input.ratio(
                    "boil_off", Range.of(0, 0.4), "Lost by evaporation before ignition over what is loaded")
            .usual(Usual.common(0.0).because("replenished on the pad"));
    public static final Input<Double> ULLAGE = Input.ratio("ullage", Range.of(0, 0.9), "Gas volume over tank volume")
            .usual(Usual.common(0.03));

    public static final InputGroup ALLOWANCES = InputGroup.table(
            "allowances", "Propellant and volume that give no speed", RESIDUAL, STARTUP_TIME, BOIL_OFF, ULLAGE);

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

    // ---- boosters

    public static final Input<Integer> COUNT =
            Input.whole("count", 1, 12, "Number of boosters").usual(Usual.of(2, "a pair", ""));
    public static final Input<Integer> BOOSTER_ENGINES = Input.whole(
                    "engines", 1, EngineCount.MOST, "Engines of each booster")
            .usual(Usual.of(1, "one", ""));
    public static final Input<Double> PROPELLANT = Input.quantity(
                    "propellant", Dimension.MASS, Range.POSITIVE, "Propellant loaded into each booster")
            .example("\"50 t\"");

    private StageInputs() {}

    public static InputGroup stage(boolean ownEngine) {
        InputGroup group = InputGroup.table("stage", "One stage, the lowest first", NAME);
        group = ownEngine ? group.and(ENGINE) : group;
        return group.and(
                        DELTA_V_SHARE,
                        DIAMETER,
                        ENGINES,
                        THRUST_TO_WEIGHT,
                        ENGINES_OUT,
                        THRUST_TO_WEIGHT_ENGINE_OUT,
                        IGNITION_PRESSURE)
                .with(ALLOWANCES, RECOVERY, DryMassInputs.GROUP);
    }

    public static InputGroup boosters(boolean ownEngine) {
        InputGroup group = InputGroup.table("boosters", "Boosters beside the first stage", COUNT);
        group = ownEngine ? group.and(ENGINE) : group;
        return group.and(BOOSTER_ENGINES, PROPELLANT, DIAMETER)
                .with(ALLOWANCES, DryMassInputs.GROUP)
                .ifWritten();
    }
}
