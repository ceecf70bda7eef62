package dev.penstock.vehicle.reading;

import dev.penstock.input.InputTable;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.MissionInputs;
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

    /** @return the plan of the flight; empty where the mission names no target by its height or energy */
    Optional<AscentPlan> plan() {
        double pressure = table.read(MissionInputs.DYNAMIC_PRESSURE_LIMIT);
        double acceleration = table.read(MissionInputs.ACCELERATION_LIMIT);
        double staging = table.read(MissionInputs.STAGING_PRESSURE_LIMIT);
        double throttle = table.read(MissionInputs.MINIMUM_THROTTLE);
        double coast = table.read(MissionInputs.STAGE_COAST);
        double heating = table.read(MissionInputs.HEATING_LIMIT);
        double angleLoad = table.read(MissionInputs.ANGLE_LOAD_LIMIT);
        DragTable drag = drag();
        return mission.target()
                .map(target -> new AscentPlan(
                        new AscentMission(
                                Planet.EARTH,
                                mission.inclination(),
                                mission.latitude(),
                                mission.insertion(),
                                target,
                                mission.parkingCoast(),
                                pressure,
                                acceleration,
                                staging,
                                throttle,
                                heating,
                                angleLoad),
                        coast,
                        drag,
                        mission.insertionFree()));
    }

    private DragTable drag() {
        List<Double> mach = table.find(MissionInputs.MACH).orElse(List.of());
        List<Double> coefficient = table.find(MissionInputs.DRAG_COEFFICIENT).orElse(List.of());
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
                    MissionInputs.MACH,
                    mach.size() + " Mach numbers and " + coefficient.size() + " coefficients",
                    "write as many of one as of the other, Mach number rising");
            return DragTable.USUAL;
        }
        return new DragTable(points);
    }
}
