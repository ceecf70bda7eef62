package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Ink;
import java.util.function.Function;

/** The sign of each kind of component, in a square of 28 px around the origin, and the figure that belongs to it. */
final class Symbols {

    private Symbols() {}

    /**
     * @param kind kind of component
     * @param colour colour of solid parts
     * @return SVG elements
     */
    static String of(PartKind kind, String colour) {
        String solid = "style=\"fill:" + colour + ";stroke:none\"";
        return switch (kind) {
            case TANK -> "<path d=\"M-9 -6q0 -7 9 -7t9 7v12q0 7 -9 7t-9 -7z\"/><path d=\"M-9 -2h18\"/>";
            case PUMP -> "<circle r=\"12\"/><path d=\"M-10.400 -6L0 12L10.400 -6\"/>";
            case TURBINE -> "<path d=\"M-4 -12L4 -12L12 12L-12 12z\"/><path d=\"M0 -12v24\"/>";
            case MOTOR -> "<circle r=\"12\"/><path d=\"M-5 5v-10l5 7l5 -7v10\"/>";
            case BATTERY -> "<path d=\"M-12 -8h24v17h-24zM-8 -8v-3h4v3M4 -8v-3h4v3M-9 0h6M3 0h6M6 -3v6\"/>";
            case LINE -> "<path d=\"M0 -13v26M-6 -8h12M-6 8h12\"/>";
            case VALVE -> "<path d=\"M-8 -11h16l-16 22h16z\"/>";
            case ORIFICE ->
                "<path d=\"M0 -13v26\" stroke-dasharray=\"3 3\"/><path d=\"M-12 0h7M5 0h7\" stroke-width=\"3\"/>";
            case SPLIT, MERGE -> "<circle r=\"6\" " + solid + "/>";
            case JACKET -> "<path d=\"M-11 -11h22v22h-22z\"/><path d=\"M-6 -11v15q0 4 3 4t3 -4v-8q0 -4 3 -4t3 4v15\"/>";
            case GAS_GENERATOR, PREBURNER ->
                "<path d=\"M-9 -12h18v16l-4 8h-10l-4 -8z\"/>" + "<path d=\"M0 -8q6 6 0.500 12q-6 -5 -0.500 -12z\" "
                        + solid + "/>";
            case INJECTOR -> "<path d=\"M-12 -5h24v5h-24z\"/><path d=\"M-8 3v6M-3 3v6M3 3v6M8 3v6\"/>";
            case CHAMBER ->
                "<path d=\"M-8 -13h16v12q0 4 -4.500 6q7 3 8.500 8h-24q1.500 -5 8.500 -8q-4.500 -2 -4.500 -6z\"/>";
            case NOZZLE -> "<path d=\"M-4 -12h8q1 14 9 24h-26q8 -10 9 -24z\"/>";
            case EXHAUST -> "<path d=\"M0 -12v20M-7 2l7 8l7 -8\"/>";
            case BOTTLE -> "<circle r=\"11\"/><path d=\"M0 -11v-3M-4 -14h8\"/>";
            case REGULATOR -> "<path d=\"M-8 -3h16l-16 13h16zM0 3v-9M-6 -6a6 6 0 0 1 12 0z\"/>";
            case HEATER -> "<path d=\"M-11 -11h22v22h-22z\"/><path d=\"M-11 0h3l3 -6l5 12l5 -12l3 6h3\"/>";
        };
    }

    /**
     * @param component component
     * @param outlet gives its first outlet station, or inlet where nothing leaves
     * @return the one figure to read beside it; empty if its stations say all
     */
    static String figure(Component component, Function<Component, Station> outlet) {
        return switch (component.kind()) {
            case PUMP, TURBINE, MOTOR -> Notation.POWER.write(Math.abs(component.workIn()));
            case JACKET -> Notation.POWER.write(component.heatIn()) + " heat";
            case GAS_GENERATOR, PREBURNER, CHAMBER -> {
                Station station = outlet.apply(component);
                yield Notation.PRESSURE.writeWithUnit(station.pressure()) + ", "
                        + Notation.TEMPERATURE.writeWithUnit(station.temperature());
            }
            default -> "";
        };
    }

    /**
     * @param component component
     * @param medium colour of what flows out of it
     * @return colour of its sign
     */
    static Ink inkOf(Component component, Ink medium) {
        return switch (component.kind()) {
            case CHAMBER, GAS_GENERATOR, PREBURNER, NOZZLE -> Ink.GAS;
            default -> medium;
        };
    }
}
