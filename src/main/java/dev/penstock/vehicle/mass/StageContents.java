package dev.penstock.vehicle.mass;

import dev.penstock.vehicle.engine.EnginePerformance;

/**
 * What a stage holds and carries, as far as its dry mass depends on it.
 *
 * @param startMass mass at ignition of the stage with everything above it (kg)
 * @param oxidizerMass oxidizer loaded (kg)
 * @param fuelMass fuel loaded (kg)
 * @param oxidizerTank oxidizer tank
 * @param fuelTank fuel tank
 * @param engine one engine
 * @param engines number of engines
 * @param commonBulkhead whether the tanks share a head
 * @param diameter outer diameter (m)
 * @param length length from nozzle exit to forward end (m)
 */
public record StageContents(
        double startMass,
        double oxidizerMass,
        double fuelMass,
        TankShape oxidizerTank,
        TankShape fuelTank,
        EnginePerformance engine,
        int engines,
        boolean commonBulkhead,
        double diameter,
        double length) {

    /** @return vacuum thrust of all engines (N) */
    public double vacuumThrust() {
        return engines * engine.vacuumThrust();
    }

    /** @return propellant loaded, a third fluid among it (kg) */
    public double propellantMass() {
        return (oxidizerMass + fuelMass) / (1 - engine.diluentShare());
    }

    /** @return third fluid loaded (kg) */
    public double diluentMass() {
        return propellantMass() * engine.diluentShare();
    }
}
