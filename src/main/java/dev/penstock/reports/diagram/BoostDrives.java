package dev.penstock.reports.diagram;

import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.pump.PumpSizing;
import java.util.List;

/** Draws what turns boost pumps: a gear, a turbine on gas, or one on liquid that leaves the main pump and passes it once more. */
final class BoostDrives {

    private BoostDrives() {}

    static void add(EngineBalance balance, DrawnEngine drawn) {
        for (Side side : Side.values()) {
            balance.concept().feed(side).boost().ifPresent(boost -> {
                if (boost.drive() == BoostDesign.Drive.GEAR) {
                    geared(side, drawn);
                } else if (boost.drive().byGas()) {
                    onGas(side, drawn);
                } else {
                    onLiquid(side, balance.machines().pump(PumpKey.main(side)).orElseThrow(), drawn);
                }
            });
        }
    }

    private static void geared(Side side, DrawnEngine drawn) {
        PartKey boost = PartKey.pump(new PumpKey(side, PumpKey.Role.BOOST));
        drawn.shafts.add(new FlowDiagram.Shaft(
                List.of(boost.id()), List.of(PartKey.pump(PumpKey.main(side)).id())));
        drawn.note(boost, Notation.POWER.write(drawn.part(boost).workIn()) + " by a gear");
    }

    /** The turbine is a part of the balance; what it turns is said by the shaft. */
    private static void onGas(Side side, DrawnEngine drawn) {
        PartKey turbine = PartKey.boostTurbine(side);
        drawn.shafts.add(new FlowDiagram.Shaft(
                List.of(PartKey.pump(new PumpKey(side, PumpKey.Role.BOOST)).id()), List.of(turbine.id())));
    }

    private static void onLiquid(Side side, PumpSizing main, DrawnEngine drawn) {
        PartKey pump = PartKey.pump(PumpKey.main(side));
        PartKey boost = PartKey.pump(new PumpKey(side, PumpKey.Role.BOOST));
        PartKey turbine = PartKey.hydraulicTurbine(side);
        Station before = drawn.station(drawn.part(pump).inlets().get(0));
        Station behind = drawn.station(drawn.part(pump).outlets().get(0));
        double twice = main.duty().massFlow() - behind.massFlow();
        int to = drawn.next();
        drawn.plates.add(new StationPlate(
                to,
                "liquid to the " + turbine.label(),
                Content.of(side),
                StationPlate.state(behind.pressure(), behind.temperature()),
                StationPlate.flow(twice),
                StationPlate.Course.DRAWN_OFF));
        int back = drawn.next();
        drawn.plates.add(new StationPlate(
                back,
                "liquid back to the " + pump.label(),
                Content.of(side),
                Notation.PRESSURE.writeWithUnit(before.pressure()),
                StationPlate.flow(twice) + " back",
                StationPlate.Course.RETURNED));
        drawn.join(pump, List.of(back), List.of(to));
        drawn.components.add(new Component(
                turbine, List.of(to), List.of(back), 0, -drawn.part(boost).workIn()));
        drawn.shafts.add(new FlowDiagram.Shaft(List.of(boost.id()), List.of(turbine.id())));
        drawn.note(
                pump,
                Notation.POWER.write(main.power()) + ", passes "
                        + StationPlate.flow(main.duty().massFlow()));
    }
}
