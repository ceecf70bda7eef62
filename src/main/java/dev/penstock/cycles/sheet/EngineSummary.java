package dev.penstock.cycles.sheet;

import dev.penstock.errors.Require;

/**
 * The headline figures of a balanced engine. Flows and specific impulses are those of the whole engine, turbine exhaust
 * included; area ratio, diameters and characteristic velocity are those of the main chamber.
 *
 * @param cycle id of the cycle
 * @param chamberPressure nozzle stagnation pressure (Pa)
 * @param mixtureRatio oxidizer over fuel leaving the tanks (-)
 * @param chamberMixtureRatio oxidizer over fuel in the main chamber, counting burnt propellant by origin (-)
 * @param vacuumThrust thrust in vacuum (N)
 * @param seaLevelThrust thrust at 101325 Pa, with flow separation if it occurs (N)
 * @param vacuumIsp specific impulse in vacuum (s)
 * @param seaLevelIsp specific impulse at 101325 Pa (s)
 * @param massFlow all flow leaving the tanks (kg/s)
 * @param oxidizerFlow oxidizer leaving its tank (kg/s)
 * @param fuelFlow fuel leaving its tank (kg/s)
 * @param diluentFlow third fluid leaving its tank (kg/s)
 * @param areaRatio nozzle exit over throat area (-)
 * @param throatDiameter throat diameter (m)
 * @param exitDiameter exit diameter (m)
 * @param characteristicVelocity delivered characteristic velocity (m/s)
 */
public record EngineSummary(
        String cycle,
        double chamberPressure,
        double mixtureRatio,
        double chamberMixtureRatio,
        double vacuumThrust,
        double seaLevelThrust,
        double vacuumIsp,
        double seaLevelIsp,
        double massFlow,
        double oxidizerFlow,
        double fuelFlow,
        double diluentFlow,
        double areaRatio,
        double throatDiameter,
        double exitDiameter,
        double characteristicVelocity) {

    public EngineSummary {
        Require.positive("engine", "chamber pressure (Pa)", chamberPressure);
        Require.positive("engine", "vacuum thrust (N)", vacuumThrust);
        Require.finite("engine", "sea-level thrust (N)", seaLevelThrust);
        Require.positive("engine", "vacuum specific impulse (s)", vacuumIsp);
        Require.finite("engine", "sea-level specific impulse (s)", seaLevelIsp);
        Require.positive("engine", "mass flow (kg/s)", massFlow);
    }
}
