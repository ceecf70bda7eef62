package dev.penstock.vehicle.stage;

import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.StageContents;
import dev.penstock.vehicle.mass.TankShape;
import java.util.OptionalDouble;

/**
 * Turns a propellant load into tanks and an outer shape: oxidizer tank forward, fuel tank aft, engine bay behind.
 *
 * @param diameter outer diameter (m); empty for one that makes the tanks six diameters long
 * @param commonBulkhead whether the tanks share a head
 * @param ullage gas volume as a fraction of each tank (-)
 */
public record StageLayout(OptionalDouble diameter, boolean commonBulkhead, double ullage) {

    /** Tanks six diameters long where no diameter is given: common practice, no source. */
    private static final double DEFAULT_SLENDERNESS = 6;

    /** Thrust frame, engine and intertank lengths over the diameter: common practice, no source. */
    private static final double EQUIPMENT_LENGTH = 1.0;

    /**
     * @param startMass mass at ignition of the stage with everything above it (kg)
     * @param load propellant
     * @param engine one engine
     * @param engines number of engines
     * @return tanks and outer shape
     */
    public StageContents contents(double startMass, PropellantLoad load, EnginePerformance engine, int engines) {
        double oxidizer = load.oxidizerTankVolume(engine, ullage);
        double fuel = load.fuelTankVolume(engine, ullage);
        double width = diameter.orElseGet(() -> Math.cbrt(4 * (oxidizer + fuel) / (Math.PI * DEFAULT_SLENDERNESS)));
        TankShape oxidizerTank = TankShape.of(oxidizer, width);
        TankShape fuelTank = TankShape.of(fuel, width);
        double shared = commonBulkhead ? Math.min(oxidizerTank.headHeight(), fuelTank.headHeight()) : 0;
        double length = oxidizerTank.length() + fuelTank.length() - shared + EQUIPMENT_LENGTH * width;
        return new StageContents(
                startMass,
                load.oxidizer(),
                load.fuel(),
                oxidizerTank,
                fuelTank,
                engine,
                engines,
                commonBulkhead,
                width,
                length);
    }
}
