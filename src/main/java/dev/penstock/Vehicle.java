package dev.penstock;

import java.util.List;

/**
 * A sized vehicle.
 *
 * @param name name from its file or concept
 * @param startMass everything on the pad at ignition: payload, dry mass and all loaded propellant (kg)
 * @param payload payload (kg)
 * @param stages stages, lowest first
 * @param warnings what a reader must know, one sentence each
 */
public record Vehicle(String name, double startMass, double payload, List<Stage> stages, List<String> warnings) {

    /**
     * One stage.
     *
     * @param name name for tables
     * @param engines number of engines
     * @param vacuumIsp specific impulse of its engine in vacuum (s)
     * @param startMass all that stands on it when its engines ignite, its own mass, boosters beside it and all above it (kg)
     * @param propellant propellant loaded, residuals and start-up propellant included (kg)
     * @param dryMass mass without propellant (kg)
     * @param deltaV ideal delta-v (m/s)
     * @param thrustToWeight thrust over weight at ignition (-)
     * @param burnTime time of the ascent burn at full thrust (s)
     * @param oxidizerTankVolume volume of the oxidizer tank (m³)
     * @param fuelTankVolume volume of the fuel tank (m³)
     */
    public record Stage(
            String name,
            int engines,
            double vacuumIsp,
            double startMass,
            double propellant,
            double dryMass,
            double deltaV,
            double thrustToWeight,
            double burnTime,
            double oxidizerTankVolume,
            double fuelTankVolume) {}

    /** Lists are copied. */
    public Vehicle {
        stages = List.copyOf(stages);
        warnings = List.copyOf(warnings);
    }
}
