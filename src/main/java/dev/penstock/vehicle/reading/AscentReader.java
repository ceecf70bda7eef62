package dev.penstock.vehicle.reading;

import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.plan.AscentPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the {@code [ascent]} table: what the flight must not exceed, and the drag. */
final class AscentReader {

    private final InputTable table;
    private final MissionReader mission;

    AscentReader(InputTable table, MissionReader mission) {
        this.table = table;
        this.mission = mission;
    }

    /** @return the plan of the flight; empty where the mission names no orbit by its height */
    Optional<AscentPlan> plan() {
        double pressure = table.quantity("dynamic_pressure_limit", Dimension.PRESSURE, Range.of(1e3, 1e6), 35e3);
        double acceleration = table.quantity("acceleration_limit", Dimension.ACCELERATION, Range.of(12, 500), 50);
        double staging = table.quantity("staging_pressure_limit", Dimension.PRESSURE, Range.of(1, 1e6), 3e3);
        double throttle = table.quantity("minimum_throttle", Dimension.RATIO, Range.of(0.1, 1), 0.5);
        double coast = table.quantity("stage_coast", Dimension.TIME, Range.of(0, 600), 5);
        DragTable drag = drag();
        if (mission.altitude().isEmpty() || !(mission.altitude().getAsDouble() >= mission.insertion())) {
            return Optional.empty();
        }
        return Optional.of(new AscentPlan(
                new AscentMission(
                        Planet.EARTH,
                        mission.inclination(),
                        mission.insertion(),
                        mission.altitude().getAsDouble(),
                        pressure,
                        acceleration,
                        staging,
                        throttle),
                coast,
                drag));
    }

    private DragTable drag() {
        List<Double> mach = table.quantities("mach", Dimension.RATIO, Range.of(0, 100));
        List<Double> coefficient = table.quantities("drag_coefficient", Dimension.RATIO, Range.of(0, 10));
        if (mach.isEmpty() && coefficient.isEmpty()) {
            return DragTable.USUAL;
        }
        List<DragTable.Point> points = new ArrayList<>();
        boolean rising = mach.size() == coefficient.size();
        for (int i = 0; i < Math.min(mach.size(), coefficient.size()); i++) {
            rising &= i == 0 || mach.get(i) > mach.get(i - 1);
            points.add(new DragTable.Point(mach.get(i), coefficient.get(i)));
        }
        if (!rising) {
            table.problem(
                    "mach",
                    mach.size() + " Mach numbers and " + coefficient.size() + " coefficients",
                    "write as many of one as of the other, Mach number rising");
            return DragTable.USUAL;
        }
        return new DragTable(points);
    }
}
