package dev.penstock.reports.diagram;

import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.Station;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** The stations of an engine by number, and on which side of a drawing what they carry belongs. */
final class DrawnStates {

    private final Map<Integer, Station> stations = new LinkedHashMap<>();

    DrawnStates(List<Station> stations) {
        stations.forEach(s -> this.stations.put(s.number(), s));
    }

    Collection<Station> all() {
        return stations.values();
    }

    Station at(int number) {
        return stations.get(number);
    }

    /** The first way out of a part; where there is none, the first way in. */
    Station outlet(Component c) {
        return at((c.outlets().isEmpty() ? c.inlets() : c.outlets()).get(0));
    }

    /** Left (-1) for oxidizer, right (1) for fuel. */
    static double side(Station station) {
        return switch (station.content()) {
            case OXIDIZER -> -1;
            case FUEL -> 1;
            case BURNT_GAS -> 0;
        };
    }

    /** Between what flows in and out. */
    double side(Component c) {
        return Stream.concat(c.inlets().stream(), c.outlets().stream())
                .map(this::at)
                .filter(Objects::nonNull)
                .mapToDouble(DrawnStates::side)
                .average()
                .orElse(0);
    }
}
