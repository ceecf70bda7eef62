package dev.penstock.reports.diagram;

import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.quantities.Notation;
import java.util.ArrayList;
import java.util.List;

/** Draws what keeps the tanks of an engine without pumps under pressure: bottle, heater, regulators and lines, or gas closed in. */
final class Pressurant {

    /** Tank pressures this close are held by one regulator (-). */
    private static final double SAME = 1e-3;

    private static final double LITRE = 1e-3;

    private Pressurant() {}

    static void add(EngineBalance balance, DrawnEngine drawn) {
        balance.concept().pressurization().ifPresent(design -> {
            if (design.feed() == PressurizationDesign.Feed.BLOWDOWN) {
                closedIn(design, drawn);
            } else {
                fromBottle(design, balance, drawn);
            }
        });
    }

    private static void closedIn(PressurizationDesign design, DrawnEngine drawn) {
        for (Side side : Side.values()) {
            drawn.note(
                    PartKey.tank(side),
                    Notation.PERCENT.write(design.initialUllage(side)) + " "
                            + design.gas().name() + ", expands");
        }
    }

    private static void fromBottle(PressurizationDesign design, EngineBalance balance, DrawnEngine drawn) {
        Station oxidizer = balance.tankOutlet(Side.OXIDIZER);
        Station fuel = balance.tankOutlet(Side.FUEL);
        int full = plate(
                drawn,
                "full pressurant bottle",
                StationPlate.state(design.bottlePressure(), design.bottleTemperature()),
                design.gas().name() + ", full");
        drawn.components.add(new Component(PartKey.bottle(), List.of(), List.of(full), 0, 0));
        boolean one = Math.abs(oxidizer.pressure() / fuel.pressure() - 1) < SAME;
        List<Integer> ends = new ArrayList<>();
        List<Integer> starts = new ArrayList<>(List.of(full));
        if (design.feed() == PressurizationDesign.Feed.HEATED) {
            int hot = plate(
                    drawn,
                    "pressurant behind the heater",
                    Notation.TEMPERATURE.writeWithUnit(design.heatedTo()),
                    design.heatSource().title());
            drawn.components.add(new Component(PartKey.heater(), List.of(full), List.of(hot), 0, 0));
            starts.set(0, hot);
        }
        if (one) {
            ends.add(regulator(drawn, "", starts, List.of(oxidizer, fuel)));
            ends.add(ends.get(0));
        } else {
            ends.add(regulator(drawn, Side.OXIDIZER.key() + " ", starts, List.of(oxidizer)));
            ends.add(regulator(drawn, Side.FUEL.key() + " ", starts, List.of(fuel)));
        }
        drawn.join(PartKey.tank(Side.OXIDIZER), List.of(ends.get(0)), List.of());
        drawn.join(PartKey.tank(Side.FUEL), List.of(ends.get(1)), List.of());
    }

    /** The gas takes the room of what leaves its tanks. */
    private static int regulator(DrawnEngine drawn, String tanks, List<Integer> in, List<Station> outlets) {
        double volume =
                outlets.stream().mapToDouble(s -> s.massFlow() / s.density()).sum();
        int out = plate(
                drawn,
                "pressurant behind the " + tanks + "regulator",
                Notation.PRESSURE.writeWithUnit(outlets.get(0).pressure()),
                Notation.significant(volume / LITRE, 3) + " L/s");
        drawn.components.add(new Component(PartKey.regulator(tanks), in, List.of(out), 0, 0));
        return out;
    }

    private static int plate(DrawnEngine drawn, String name, String upper, String lower) {
        int number = drawn.next();
        drawn.plates.add(new StationPlate(number, name, Content.PRESSURANT, upper, lower, StationPlate.Course.ONWARD));
        return number;
    }
}
