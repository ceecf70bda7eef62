package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import java.util.List;

/**
 * Engines that burn together.
 *
 * @param groups engines of one kind each
 */
public record Thrusters(List<Group> groups) {

    /**
     * Engines of one kind.
     *
     * @param engine one engine
     * @param count how many
     */
    public record Group(EnginePerformance engine, int count) {

        public Group {
            Require.within("thrusters", "number of engines", count, 1, 1000);
        }
    }

    public Thrusters {
        groups = List.copyOf(groups);
    }

    /**
     * @param engine one engine
     * @param count how many
     * @return engines of one kind
     */
    public static Thrusters of(EnginePerformance engine, int count) {
        return new Thrusters(List.of(new Group(engine, count)));
    }

    /** @return vacuum thrust (N) */
    public double vacuumThrust() {
        double sum = 0;
        for (Group group : groups) {
            sum += group.count() * group.engine().vacuumThrust();
        }
        return sum;
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust at full flow (N)
     */
    public double thrustAt(double ambientPressure) {
        double sum = 0;
        for (Group group : groups) {
            sum += group.count() * group.engine().thrustAt(ambientPressure);
        }
        return sum;
    }

    /** @return propellant flow (kg/s) */
    public double massFlow() {
        double sum = 0;
        for (Group group : groups) {
            sum += group.count() * group.engine().massFlow();
        }
        return sum;
    }
}
