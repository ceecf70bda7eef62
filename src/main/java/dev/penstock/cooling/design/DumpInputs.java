package dev.penstock.cooling.design;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Range;

/** What a concept may say of a coolant that is dumped behind its jacket. */
public final class DumpInputs {

    public static final Input<Double> PRESSURE = Input.ratio(
                    "pressure_share", Range.of(0.01, 1), "Pressure before the jacket over chamber pressure")
            .usual(Usual.between(0.15, 0.3, 0.5, Usual.COMMON).because("of chamber pressure"));
    public static final Input<Double> AREA_RATIO = Input.ratio(
                    "area_ratio",
                    Range.of(1, 60),
                    "Exit area over throat area of the nozzles at the end of the jacket, through which the coolant leaves")
            .usual(Usual.common(4.0));
    public static final Input<Double> EFFICIENCY = Input.ratio(
                    "efficiency", Range.of(0.3, 1), "Thrust of the dumped coolant over the ideal one")
            .usual(Usual.between(0.85, 0.93, 0.97, Usual.COMMON));

    /** A jacket whose coolant is dumped behind it. */
    public static final InputGroup GROUP = InputGroup.table(
                    "dump",
                    "There if the coolant of this circuit, the last, is drawn off behind the pump and dumped at the end of its wall",
                    PRESSURE,
                    AREA_RATIO,
                    EFFICIENCY)
            .ifWritten();

    /** Share of the propellant that is drawn off, where a circuit dumps it. */
    public static final Usual<Double> FLOW_FRACTION =
            Usual.common(0.03).because("of the propellant's whole flow, dumped behind the jacket");

    /** Share of the pressure before a jacket that its friction may take where the coolant is dumped behind it. */
    public static final double LARGEST_DROP = 0.5;

    private DumpInputs() {}
}
