package dev.penstock.cycles.concept;

import dev.penstock.combustion.GasModel;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.shaft.GearTeeth;
import dev.penstock.turbomachinery.shaft.MechanicalLosses;
import dev.penstock.turbomachinery.turbine.TurbineInputs;

/** What a concept may say of turbine gas: burners, turbines, shafts, ducts and exhaust. */
public final class GasInputs {

    // ---- burner

    public static final Input<Double> BURNER_TEMPERATURE = Input.quantity(
                    "temperature", Dimension.TEMPERATURE, Range.of(250, 3500), "Temperature of its gas")
            .follows(
                    "by burner, no colder than the fuel's table of gas begins; closes the power balance where the turbine's pressure ratio is given");
    public static final Input<Double> BURNER_INJECTOR_LOSS = Input.ratio(
                    "injector_loss", Range.of(0, 0.5), "Pressure lost in its injector over its pressure")
            .usual(Usual.between(0.08, 0.12, 0.20, Usual.COMMON).because("10 to 20 % of burner pressure"));
    public static final Input<GasModel> GAS_MODEL = Input.choice("gas_model", GasModel.class, "Model of its gas")
            .usual(Usual.of(
                    GasModel.AUTOMATIC,
                    "measured data where equilibrium is known to be wrong, else equilibrium without soot, frozen",
                    ""));

    public static final Input<String> DILUENT_FLUID = Input.text(
                    "fluid", "What is injected into the generator beside the propellants, a file in fluids")
            .example("\"water\"");
    public static final Input<Double> DILUENT_SHARE = Input.ratio(
                    "flow_fraction", Range.of(0.001, 0.6), "Its share of the generator's gas")
            .example("0.2");
    public static final Input<Double> DILUENT_TANK_PRESSURE = Input.quantity(
                    "tank_pressure", Dimension.PRESSURE, Range.of(1e4, 6e7), "Pressure in its tank")
            .follows("by fluid");

    // ---- turbine

    public static final Input<Double> PRESSURE_RATIO = Input.ratio(
                    "pressure_ratio", Range.of(1.01, 100), "Inlet over outlet pressure, total to static")
            .follows("5 to 25 are usual where the gas is dumped; else it closes the power balance");

    public static final Input<Double> BYPASS = Input.ratio(
                    "bypass", Range.of(0, 0.6), "Share of the gas before this turbine that an orifice leads past it")
            .usual(Usual.of(0.0, "all of it drives", ""));

    // ---- shafts

    public static final Input<ShaftDesign.Arrangement> ARRANGEMENT = Input.choice(
                    "arrangement", ShaftDesign.Arrangement.class, "How pumps and turbines are coupled")
            .follows("two shafts where the densities differ as with hydrogen, " + Usual.COMMON);
    public static final Input<ShaftDesign.GasPath> GAS_PATH = Input.choice(
                    "gas_path", ShaftDesign.GasPath.class, "Way of one gas through two turbines")
            .usual(Usual.common(ShaftDesign.GasPath.PARALLEL));
    public static final Input<Double> GEAR_RATIO = Input.ratio(
                    "gear_ratio", Range.of(0.1, 10), "Speed of the turbine over that of the fuel pump")
            .usual(Usual.of(1.0, "turbine on the fuel pump's shaft", ""));
    public static final Input<Double> PUMP_SPEED_RATIO = Input.ratio(
                    "pump_speed_ratio", Range.of(0.05, 20), "Speed of the fuel pump over that of the oxidizer pump")
            .computed("each pump at its own best speed");

    /** Built shafts turn at 0.70 to 1.35 times the fastest that the limits here allow (docs/validation/ratings.md). */
    public static final Input<Double> SPEED_SHARE = Input.ratio(
                    "speed_share",
                    Range.of(0.2, 1),
                    "Speed of the main shafts over the fastest that their limits allow")
            .usual(Usual.of(1.0, "as fast as the limits allow", ""));

    public static final Input<Double> KICK_GEAR_RATIO = Input.ratio(
                    "kick_gear_ratio", Range.of(0.2, 10), "Speed of a kick pump over that of the main pump before it")
            .usual(Usual.of(1.0, "on the main pump's shaft; its own gear otherwise", ""));

    // ---- ducts, exhaust, jacket heat

    public static final Input<Double> HOT_GAS_LOSS = Input.ratio(
                    "hot_gas_loss", Range.of(0, 0.3), "Pressure lost in a hot-gas duct over the pressure in it")
            .usual(Usual.between(0.01, 0.02, 0.04, Usual.COMMON).because("of duct pressure"));
    public static final Input<Double> GAS_INJECTOR_LOSS = Input.ratio(
                    "gas_loss", Range.of(0, 0.5), "Pressure lost in the gas side of the injector over chamber pressure")
            .usual(Usual.between(0.05, 0.08, 0.12, Usual.COMMON).because("of chamber pressure"));
    public static final Input<Double> EXHAUST_AREA_RATIO = Input.ratio(
                    "area_ratio", Range.of(1, 60), "Exit area of the exhaust nozzle over its throat area")
            .usual(Usual.common(4.0));
    public static final Input<Double> EXHAUST_INTO = Input.ratio(
                    "into_area_ratio",
                    Range.of(1, 1e4),
                    "Area ratio of the main nozzle, behind the throat, at which the turbine gas is led into it")
            .computed("through a nozzle of its own");
    public static final Input<Double> EXHAUST_EFFICIENCY = Input.ratio(
                    "efficiency", Range.of(0.3, 1), "Thrust of the exhaust nozzle over the ideal one")
            .usual(Usual.between(0.85, 0.93, 0.97, Usual.COMMON));
    public static final Input<Double> DUCT_LOSS = Input.ratio(
                    "duct_loss", Range.of(0, 0.8), "Pressure lost before the exhaust nozzle over turbine exit pressure")
            .usual(Usual.between(0.05, 0.15, 0.3, Usual.COMMON).because("of turbine exit pressure"));
    public static final Input<Double> EXHAUST_CANT = Input.quantity(
                    "cant_angle",
                    Dimension.ANGLE,
                    Range.of(0, Math.PI / 3),
                    "Angle between the axis of the exhaust nozzle and that of the engine")
            .usual(Usual.of(0.0, "it points aft", ""));
    public static final Input<Double> EXHAUST_SWIVEL = Input.quantity(
                    "swivel_angle",
                    Dimension.ANGLE,
                    Range.of(0, Math.PI / 3),
                    "Largest angle by which the exhaust nozzle is swivelled, for roll control")
            .usual(Usual.of(0.0, "it is fixed", ""));
    public static final Input<Double> HEATED_SHARE = Input.ratio(
                    "heated_share", Range.of(0.05, 1), "Share of the fuel that passes the jacket")
            .follows("by cycle, " + Usual.COMMON);
    public static final Input<Double> TURBINE_BYPASS = Input.ratio(
                    "turbine_bypass", Range.of(0, 0.6), "Share of the heated fuel that passes the turbines by")
            .usual(Usual.between(0.02, 0.05, 0.10, Usual.COMMON).because("margin for control"));

    private GasInputs() {}

    public static InputGroup burner(String key, Burner burner) {
        String title = "The " + burner.title();
        InputGroup group = burner == Burner.DECOMPOSITION
                ? InputGroup.table(key, title, BURNER_INJECTOR_LOSS, GAS_MODEL)
                : InputGroup.table(key, title, BURNER_TEMPERATURE, BURNER_INJECTOR_LOSS, GAS_MODEL);
        return burner == Burner.GENERATOR ? group.with(diluent()) : group;
    }

    private static InputGroup diluent() {
        return InputGroup.table(
                        ConceptTables.DILUENT.key(),
                        "A third fluid that keeps the gas cool, with a tank and a pump of its own",
                        DILUENT_FLUID,
                        DILUENT_SHARE,
                        DILUENT_TANK_PRESSURE)
                .ifWritten();
    }

    public static InputGroup turbine(TurbinePlace place, boolean ownRatio) {
        InputGroup group =
                TurbineInputs.GROUP.as(place.key(), "The " + place.title()).and(BYPASS);
        return ownRatio ? group.and(PRESSURE_RATIO) : group;
    }

    public static InputGroup shafts() {
        return InputGroup.table(
                ConceptTables.SHAFTS.key(),
                "How pumps and turbines are coupled",
                ARRANGEMENT,
                GAS_PATH,
                GEAR_RATIO,
                PUMP_SPEED_RATIO,
                SPEED_SHARE,
                KICK_GEAR_RATIO,
                GearTeeth.SPEED_LIMIT,
                MechanicalLosses.MECHANICAL_EFFICIENCY,
                MechanicalLosses.GEAR_EFFICIENCY,
                MechanicalLosses.ACCESSORY_POWER);
    }

    public static InputGroup exhaust() {
        return InputGroup.table(
                ConceptTables.EXHAUST.key(),
                "Nozzle of the turbine gas",
                EXHAUST_INTO,
                EXHAUST_AREA_RATIO,
                EXHAUST_EFFICIENCY,
                DUCT_LOSS,
                EXHAUST_CANT,
                EXHAUST_SWIVEL);
    }
}
