package dev.penstock.cycles.concept;

import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Scatter;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.pump.HydraulicTurbine;
import dev.penstock.turbomachinery.pump.PumpInputs;
import dev.penstock.turbomachinery.turbine.BoostTurbine;
import java.util.List;

/**
 * What a concept may say of one propellant from tank to injector.
 *
 * @param side oxidizer or fuel
 */
public record FeedInputs(Side side) {

    private static final Range LOSSES = Range.of(0, 1);
    private static final double MAIN_VALVE = 0.03;
    private static final double LINE = 0.02;
    private static final double DUCTS = 0.20;

    /**
     * Calibration orifice over chamber pressure (-). Valve and orifice together, 0.18, lie between the two schedules that are published: the
     * oxidizer of a worked kerosene engine has 0.20 to 0.24 between pump and injector [nasa-sp-125], a pressure-fed engine 0.16 and 0.19
     * between interface and injector [nasa-tn-d-7375]; six built oxidizer pumps ask for 0.18 in the mean (decision 0214).
     */
    private static final double TRIM = 0.15;

    /**
     * Lines of a propellant that cools a jacket over chamber pressure (-): what seven built engines lose beyond injector, valve, orifice and the
     * jacket itself has its median here (decision 0214, with each left out).
     */
    private static final Usual<Double> DUCTED = Usual.between(0.05, DUCTS, 0.45, Usual.COMMON)
            .because(
                    "of chamber pressure: ducts to and from the jacket and its manifolds; the middle of built engines");

    private static final Usual<Double> PLAIN =
            Usual.between(0.01, LINE, 0.04, Usual.COMMON).because("of chamber pressure");
    private static final Usual<Double> GEAR = Usual.common(0.96).because("gear");

    /** Main valves of 2 to 5 % and orifices from hardly any to a quarter of the chamber pressure: built oxidizer sides (decision 0214). */
    private static final Scatter VALVES = Scatter.factors(0.4, 1.8);

    // ---- tank

    public static final Input<Double> TANK_PRESSURE = Input.quantity(
                    "pressure", Dimension.PRESSURE, Range.of(1e4, 6e7), "Pressure in the tank")
            .follows("by propellant; without pumps what the chamber pressure asks for");
    public static final Input<Double> TANK_TEMPERATURE = Input.quantity(
                    "temperature", Dimension.TEMPERATURE, Range.POSITIVE, "Temperature of the propellant in the tank")
            .follows("by propellant and loading");

    // ---- boost pump

    public static final Input<Double> PRESSURE_RISE = Input.quantity(
                    "pressure_rise", Dimension.PRESSURE, Range.of(1e4, 2e7), "Pressure that the boost pump adds")
            .computed("what the main pump's suction needs at the speed that its other limits allow");
    public static final Input<BoostDesign.Drive> DRIVE = Input.choice(
                    "drive", BoostDesign.Drive.class, "What turns the boost pump")
            .usual(Usual.common(BoostDesign.Drive.LIQUID).because("hydraulic turbine"));
    public static final Input<Double> DRIVE_EFFICIENCY = Input.ratio(
                    "drive_efficiency", Range.of(0.05, 1), "Shaft power of the boost pump over that of what drives it")
            .follows("by drive: turbine on liquid, gear, or turbine on gas, " + Usual.COMMON);

    public Input<String> propellant() {
        return Input.text(side.key(), "The " + side.key() + ", a file in fluids")
                .example('"' + (side == Side.FUEL ? UsualFluids.fuel() : UsualFluids.oxidizer()) + '"');
    }

    /** @return dotted key of the propellant in a concept */
    public String propellantPath() {
        return ConceptTables.PROPELLANTS.of(propellant()).path();
    }

    public Input<String> loading() {
        return Input.word(
                        side.key() + "_loading",
                        List.of("normal", "subcooled"),
                        "Whether the " + side.key() + " is loaded colder than it boils")
                .usual(Usual.common("normal"));
    }

    public Input<Double> suctionLoss() {
        return Input.quantity(
                        side.key() + "_suction_loss",
                        Dimension.PRESSURE,
                        Range.of(0, 5e6),
                        "Pressure lost between tank and pump, " + side.key())
                .usual(Usual.between(20e3, 40e3, 70e3, Usual.COMMON).because("35 to 50 kPa are usual"));
    }

    public Input<Double> dischargeLoss() {
        return Input.ratio(
                        side.key() + "_discharge_loss",
                        LOSSES,
                        "Pressure lost in lines and ducts behind the pump over chamber pressure, " + side.key())
                .follows(percent(LINE) + " of chamber pressure, and " + percent(DUCTS)
                        + " where this propellant cools a jacket on its way");
    }

    /**
     * @param cools whether this propellant passes a jacket on its way to where it burns
     * @return default of {@link #dischargeLoss()}
     */
    public static Usual<Double> dischargeLoss(boolean cools) {
        return cools ? DUCTED : PLAIN;
    }

    public Input<Double> valveLoss() {
        return Input.ratio(
                        side.key() + "_valve_loss",
                        LOSSES,
                        "Pressure lost in valves and trim over chamber pressure, " + side.key())
                .follows("main valve " + percent(MAIN_VALVE) + " of chamber pressure, and " + percent(TRIM)
                        + " for the orifice that trims flow and mixture ratio")
                .scatter(VALVES);
    }

    /**
     * @param trimmed whether an orifice that trims flow and mixture ratio sits in this propellant
     * @return default of {@link #valveLoss()}
     */
    public static Usual<Double> valveLoss(boolean trimmed) {
        return trimmed
                ? Usual.of(
                        MAIN_VALVE + TRIM,
                        "of chamber pressure: main valve " + percent(MAIN_VALVE)
                                + ", calibration orifice that trims flow and mixture ratio " + percent(TRIM),
                        Usual.COMMON)
                : Usual.of(
                        MAIN_VALVE,
                        "of chamber pressure, main valve only: the flows are trimmed in the other propellant",
                        Usual.COMMON);
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    public Input<Double> injectorLoss() {
        return Input.ratio(
                        side.key() + "_loss",
                        LOSSES,
                        "Pressure lost in the injector over chamber pressure, " + side.key())
                .usual(Usual.between(0.15, 0.18, 0.22, "nasa-sp-125").because("15 to 20 % of chamber pressure"));
    }

    /**
     * @param drive what turns a boost pump
     * @return default of {@link #DRIVE_EFFICIENCY}
     */
    public static Usual<Double> driveEfficiency(BoostDesign.Drive drive) {
        return switch (drive) {
            case LIQUID -> HydraulicTurbine.EFFICIENCY.because("hydraulic turbine");
            case GEAR -> GEAR;
            case HOT_GAS, TURBINE_EXHAUST, WARM_FUEL -> BoostTurbine.EFFICIENCY;
        };
    }

    public InputGroup tank() {
        return InputGroup.table(side.key(), "Tank of the " + side.key(), TANK_PRESSURE, TANK_TEMPERATURE);
    }

    public InputGroup pump() {
        return PumpInputs.GROUP.as(side.key(), "Pump of the " + side.key());
    }

    public InputGroup boostPump() {
        return InputGroup.table(
                        side.key(),
                        "Slow pump before the pump of the " + side.key(),
                        PRESSURE_RISE,
                        DRIVE,
                        DRIVE_EFFICIENCY)
                .and(PumpInputs.GROUP.inputs().toArray(Input<?>[]::new))
                .ifWritten();
    }
}
