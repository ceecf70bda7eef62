package dev.penstock.reports.diagram;

import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.quantities.Notation;
import java.util.List;

/** Draws the battery that feeds an engine's motors. */
final class Battery {

    private Battery() {}

    static void add(EngineBalance balance, DrawnEngine drawn) {
        balance.electric().ifPresent(electric -> {
            PartKey battery = PartKey.battery();
            List<String> motors = drawn.components.stream()
                    .filter(c -> c.kind() == PartKind.MOTOR)
                    .map(Component::id)
                    .toList();
            drawn.components.add(new Component(battery, List.of(), List.of(), 0, 0));
            drawn.shafts.add(new FlowDiagram.Shaft(motors, List.of(battery.id())));
            drawn.note(
                    battery,
                    Notation.POWER.write(electric.batteryPower()) + ", "
                            + Notation.MASS.writeWithUnit(electric.batteryMass()));
        });
    }
}
