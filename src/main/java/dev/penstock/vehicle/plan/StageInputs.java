package dev.penstock.vehicle.plan;

import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.mass.RecoveryHardware;
import dev.penstock.vehicle.mass.TankMaterial;
import java.util.List;

/** What a vehicle may say of its stages and boosters. */
public final class StageInputs {

    public static final Input<String> NAME =
            Input.text("name", "Name of the stage").follows("its number");
    public static final Input<String> ENGINE = Input.text("engine", "Concept file of its engine, relative to this file")
            .example("\"../heron.toml\"");
    public static final Input<Double> DELTA_V_SHARE = Input.ratio(
                    "delta_v_share", Range.of(0.001, 1), "Its share of the ideal speed gain")
            .computed("the split with the least start mass");
    public static final Input<Double> DIAMETER = Input.quantity(
                    "diameter", Dimension.LENGTH, Range.of(0.05, 100), "Outer diameter")
            .computed("tanks six diameters long");
    public static final Input<List<Double>> ENGINES = Input.quantities(
                    "engines", Dimension.RATIO, Range.of(1, EngineCount.MOST), "Number of engines")
            .computed("as many as thrust_to_weight takes");
    public static final Input<List<Double>> THRUST_TO_WEIGHT = Input.quantities(
                    "thrust_to_weight",
                    Dimension.RATIO,
                    Range.of(0.01, 50),
                    "Thrust over weight at ignition, as many engines as this takes")
            .computed("1.3 for the first stage, 0.8 above, " + Usual.COMMON);
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

    // ---- dry mass

    public static final Input<Boolean> COMMON_BULKHEAD = Input.flag("common_bulkhead", "Whether the tanks share a head")
            .usual(Usual.of(false, "two heads between them", ""));
    public static final Input<Double> MASS = Input.quantity(
                    "mass", Dimension.MASS, Range.POSITIVE, "The whole dry mass")
            .computed("line by line from how the stage is built");
    public static final Input<Double> STRUCTURAL_COEFFICIENT = Input.ratio(
                    "structural_coefficient", Range.of(0.001, 0.9), "Dry mass over dry mass and propellant")
            .computed("line by line from how the stage is built");
    public static final Input<Double> GROWTH_MARGIN = Input.ratio(
                    "growth_margin", Range.of(0, 2), "Growth that is added to the dry mass, over it")
            .follows("15 % of an estimate, none of a given mass, " + Usual.COMMON);
    public static final Input<String> TANKS = Input.word(
                    "tanks", List.of("by-volume", "integral", "pressure-stabilized"), "How the tanks are built")
            .usual(Usual.of("by-volume", "mass by volume", ""));
    public static final Input<TankMaterial> MATERIAL = Input.choice(
                    "material", TankMaterial.class, "Material of the tanks")
            .usual(Usual.common(TankMaterial.ALUMINIUM));
    public static final Input<String> PRESSURANT = Input.text(
                    "pressurant", "What keeps the tanks under pressure: a file in fluids, own-vapour or none")
            .usual(Usual.common(UsualFluids.pressurant()));
    public static final Input<Double> COLLAPSE_FACTOR = Input.ratio(
                    "collapse_factor",
                    Range.of(0.5, 10),
                    "Pressurant needed over what fills the tank at its own temperature")
            .computed("by propellant");
    public static final Input<Double> ENGINE_MASS = Input.quantity(
                    "engine_mass", Dimension.MASS, Range.POSITIVE, "Mass of one engine")
            .computed("as the engine's balance estimates it");
    public static final Input<Double> FAIRING = Input.quantity(
                    "fairing", Dimension.MASS, Range.NOT_NEGATIVE, "Mass of a fairing that this stage carries")
            .usual(Usual.of(0.0, "none", ""));
    public static final Input<Double> RECOVERY_HARDWARE = Input.ratio(
                    "recovery_hardware", Range.of(0, 1), "Mass of legs, fins and the like over the other dry mass")
            .usual(Usual.common(RecoveryHardware.USUAL_FRACTION));
    public static final Input<Double> BOTTLE_PRESSURE = Input.quantity(
                    "bottle_pressure", Dimension.PRESSURE, Range.of(5e6, 8e7), "Pressure of the full bottles")
            .usual(Usual.common(30e6));
    public static final Input<Double> BOTTLE_TEMPERATURE = Input.quantity(
                    "bottle_temperature", Dimension.TEMPERATURE, Range.of(60, 400), "Temperature of the full bottles")
            .usual(Usual.of(290.0, "room temperature", ""));
    public static final Input<Double> PRESSURANT_TEMPERATURE = Input.quantity(
                    "pressurant_temperature",
                    Dimension.TEMPERATURE,
                    Range.of(60, 1000),
                    "Temperature to which the pressurant is heated")
            .computed("it is not heated");
    public static final Input<String> BOTTLE = Input.word(
                    "bottle", List.of("composite", "titanium"), "How bottles are built")
            .usual(Usual.common("composite"));

    public static final InputGroup DRY_MASS = InputGroup.table(
            "dry_mass",
            "Dry mass: a mass, a structural coefficient, or how the stage is built",
            MASS,
            STRUCTURAL_COEFFICIENT,
            GROWTH_MARGIN,
            TANKS,
            MATERIAL,
            COMMON_BULKHEAD,
            PRESSURANT,
            COLLAPSE_FACTOR,
            BOTTLE_PRESSURE,
            BOTTLE_TEMPERATURE,
            PRESSURANT_TEMPERATURE,
            BOTTLE,
            ENGINE_MASS,
            FAIRING,
            RECOVERY_HARDWARE);

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
                .with(ALLOWANCES, RECOVERY, DRY_MASS);
    }

    public static InputGroup boosters(boolean ownEngine) {
        InputGroup group = InputGroup.table("boosters", "Boosters beside the first stage", COUNT);
        group = ownEngine ? group.and(ENGINE) : group;
        return group.and(BOOSTER_ENGINES, PROPELLANT, DIAMETER)
                .with(ALLOWANCES, DRY_MASS)
                .ifWritten();
    }
}
