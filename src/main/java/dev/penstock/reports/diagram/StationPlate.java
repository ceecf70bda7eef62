package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.quantities.Notation;

/**
 * What a diagram writes beside a flow: a station of the table, or the state of something that is no station.
 *
 * @param number number of the station; below zero for what has none
 * @param name name for people
 * @param content what flows
 * @param upper first line: pressure and temperature
 * @param lower second line: flow
 * @param course where it goes
 */
record StationPlate(int number, String name, Content content, String upper, String lower, Course course) {

    /** Where a flow goes. */
    enum Course {
        /** From tank to nozzle. */
        ONWARD,
        /** Back into a part that it has passed. */
        RETURNED,
        /** Out of a part, back to one above it. */
        DRAWN_OFF
    }

    static StationPlate of(Station station) {
        return new StationPlate(
                station.number(),
                station.name(),
                station.content(),
                state(station.pressure(), station.temperature()),
                flow(station.massFlow()),
                Course.ONWARD);
    }

    static String state(double pressure, double temperature) {
        return Notation.PRESSURE.writeWithUnit(pressure) + " · " + Notation.TEMPERATURE.writeWithUnit(temperature);
    }

    static String flow(double massFlow) {
        return Notation.MASS_FLOW.writeWithUnit(massFlow);
    }

    boolean numbered() {
        return number > 0;
    }
}
