package dev.penstock.reports.diagram;

import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.Station;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** The plates of a diagram by number, and on which side of a drawing what they carry belongs. */
final class DrawnStates {

    private final Map<Integer, Station> stations = new LinkedHashMap<>();
    private final Map<Integer, StationPlate> plates = new LinkedHashMap<>();

    DrawnStates(DrawnEngine engine) {
        engine.stations.forEach(s -> stations.put(s.number(), s));
        engine.plates.forEach(p -> plates.put(p.number(), p));
    }

    Collection<StationPlate> all() {
        return plates.values();
    }

    StationPlate at(int number) {
        return plates.get(number);
    }

    /** The first way out of a part; where there is none, the first way in. */
    StationPlate outlet(Component c) {
        return at(first(c));
    }

    /** The station there. */
    Station firstStation(Component c) {
        return stations.get(first(c));
    }

    private static int first(Component c) {
        return (c.outlets().isEmpty() ? c.inlets() : c.outlets()).get(0);
    }

    /** Left (-1) for oxidizer, right (1) for fuel. */
    static double side(StationPlate plate) {
        return switch (plate.content()) {
            case OXIDIZER -> -1;
            case FUEL -> 1;
            case BURNT_GAS, PRESSURANT, DILUENT -> 0;
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
