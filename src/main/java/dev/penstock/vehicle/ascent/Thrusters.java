package dev.penstock.vehicle.ascent;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.SolidMotor;
import java.util.List;
import java.util.Optional;

/**
 * Engines that burn together, and solid motors beside them, which are lit with them and burn by their own table.
 *
 * @param groups engines of one kind each
 * @param solids solid motors beside them
 */
public record Thrusters(List<Group> groups, Optional<Solids> solids) {

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

    /**
     * Solid motors of one kind.
     *
     * @param motor one motor
     * @param count how many
     */
    public record Solids(SolidMotor motor, int count) {

        public Solids {
            Require.within("thrusters", "number of solid motors", count, 1, 1000);
        }

        /**
         * @param sinceIgnition time after ignition (s)
         * @return vacuum thrust of all (N)
         */
        public double vacuumThrust(double sinceIgnition) {
            return count * motor.vacuumThrust(sinceIgnition);
        }
    }

    public Thrusters {
        groups = List.copyOf(groups);
    }

    /** Engines alone. */
    public Thrusters(List<Group> groups) {
        this(groups, Optional.empty());
    }

    /**
     * @param engine one engine
     * @param count how many
     * @return engines of one kind
     */
    public static Thrusters of(EnginePerformance engine, int count) {
        return new Thrusters(List.of(new Group(engine, count)));
    }

    /**
     * @param others engines in the place of these
     * @return those with the same solid motors beside them
     */
    public Thrusters withGroups(List<Group> others) {
        return new Thrusters(others, solids);
    }

    /** @return vacuum thrust of the engines (N) */
    public double vacuumThrust() {
        double sum = 0;
        for (Group group : groups) {
            sum += group.count() * group.engine().vacuumThrust();
        }
        return sum;
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust of the engines at full flow (N)
     */
    public double thrustAt(double ambientPressure) {
        double sum = 0;
        for (Group group : groups) {
            sum += group.count() * group.engine().thrustAt(ambientPressure);
        }
        return sum;
    }

    /** @return propellant flow of the engines (kg/s) */
    public double massFlow() {
        double sum = 0;
        for (Group group : groups) {
            sum += group.count() * group.engine().massFlow();
        }
        return sum;
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust of engines and solid motors soon after ignition (N)
     */
    public double thrustAtIgnition(double ambientPressure) {
        return thrustAt(ambientPressure)
                + solids.map(s -> s.count() * s.motor().thrustAtIgnition(ambientPressure))
                        .orElse(0.0);
    }

    /** @return exhaust velocity in vacuum (m/s), over the whole burn of solid motors where they burn too */
    public double exhaustVelocity() {
        if (solids.isEmpty()) {
            return vacuumThrust() / massFlow();
        }
        SolidMotor motor = solids.get().motor();
        int count = solids.get().count();
        return (vacuumThrust() * motor.burnTime() + count * motor.impulse())
                / (massFlow() * motor.burnTime() + count * motor.propellant());
    }

    /**
     * @param burn propellant to burn (kg)
     * @return time that takes at full flow (s): that of solid motors where they burn too
     */
    public double burnTime(double burn) {
        return solids.map(s -> s.motor().burnTime()).orElseGet(() -> burn / massFlow());
    }
}
