package dev.penstock;

import java.util.List;

/**
 * A balanced engine. Flows, thrusts and specific impulses are those of the whole engine, turbine exhaust included; area ratio,
 * diameters and characteristic velocity are those of the main chamber.
 *
 * @param name name from the concept
 * @param cycle id of the cycle
 * @param chamberPressure nozzle stagnation pressure (Pa, absolute)
 * @param mixtureRatio oxidizer over fuel by mass, leaving the tanks (-)
 * @param vacuumThrust thrust in vacuum (N)
 * @param seaLevelThrust thrust at 101325 Pa, with flow separation if it occurs (N)
 * @param vacuumIsp specific impulse in vacuum (s)
 * @param seaLevelIsp specific impulse at 101325 Pa (s)
 * @param massFlow all flow leaving the tanks (kg/s)
 * @param areaRatio nozzle exit over throat area (-)
 * @param throatDiameter throat diameter (m)
 * @param exitDiameter exit diameter (m)
 * @param characteristicVelocity delivered characteristic velocity (m/s)
 * @param dryMass mass of the engine without propellants (kg)
 * @param stations every numbered station
 * @param pumps pumps; none for pressure-fed cycles
 * @param turbines turbines
 * @param jackets cooling jackets from the injector to the nozzle exit; none if nothing cools
 * @param limits every limit held against its value
 * @param warnings what a reader must know, one sentence each
 * @param worstResidual largest relative residual of the closing equations and of the audit of mass and energy (-)
 */
public record Engine(
        String name,
        String cycle,
        double chamberPressure,
        double mixtureRatio,
        double vacuumThrust,
        double seaLevelThrust,
        double vacuumIsp,
        double seaLevelIsp,
        double massFlow,
        double areaRatio,
        double throatDiameter,
        double exitDiameter,
        double characteristicVelocity,
        Estimate dryMass,
        List<Station> stations,
        List<Pump> pumps,
        List<Turbine> turbines,
        List<Jacket> jackets,
        List<Limit> limits,
        List<String> warnings,
        double worstResidual) {

    /**
     * State of one medium at one numbered place. Pressures are total and absolute; in the chamber the nozzle stagnation pressure
     * stands.
     *
     * @param number number of the station
     * @param name where it is
     * @param medium what flows
     * @param pressure pressure (Pa)
     * @param temperature temperature (K)
     * @param density density (kg/m³)
     * @param enthalpy specific enthalpy relative to the elements at 298.15 K (J/kg)
     * @param massFlow mass flow (kg/s)
     */
    public record Station(
            int number,
            String name,
            String medium,
            double pressure,
            double temperature,
            double density,
            double enthalpy,
            double massFlow) {}

    /**
     * A pump.
     *
     * @param name name in the cycle
     * @param massFlow mass flow (kg/s)
     * @param inletPressure total pressure at the inlet (Pa, absolute)
     * @param dischargePressure total pressure at the outlet (Pa, absolute)
     * @param power shaft power (W)
     * @param efficiency isentropic head over shaft work (-)
     * @param speed shaft speed (rad/s)
     * @param stages number of main stages
     * @param impellerDiameter outer diameter of the main stages (m)
     * @param tipSpeed of the main stages (m/s)
     */
    public record Pump(
            String name,
            double massFlow,
            double inletPressure,
            double dischargePressure,
            double power,
            double efficiency,
            double speed,
            int stages,
            double impellerDiameter,
            double tipSpeed) {}

    /**
     * A turbine.
     *
     * @param name name in the cycle
     * @param massFlow mass flow (kg/s)
     * @param inletTemperature total temperature at the inlet (K)
     * @param pressureRatio inlet total over exit static pressure (-)
     * @param power shaft power (W)
     * @param efficiency work over isentropic total-to-static drop (-)
     * @param speed shaft speed (rad/s)
     * @param stages number of stages
     * @param meanDiameter pitch diameter (m)
     */
    public record Turbine(
            String name,
            double massFlow,
            double inletTemperature,
            double pressureRatio,
            double power,
            double efficiency,
            double speed,
            int stages,
            double meanDiameter) {}

    /**
     * A cooling jacket.
     *
     * @param name name of its circuit; "cooling" for the one that begins at the injector
     * @param heatLoad heat taken up by the coolant (W)
     * @param pressureDrop from inlet to outlet manifold (Pa)
     * @param temperatureRise of the coolant, from inlet to outlet manifold (K)
     * @param peakWallTemperature hottest temperature of the wall metal (K)
     * @param peakHeatFlux largest heat flux into the wall (W/m²)
     */
    public record Jacket(
            String name,
            double heatLoad,
            double pressureDrop,
            double temperatureRise,
            double peakWallTemperature,
            double peakHeatFlux) {}

    /** Lists are copied. */
    public Engine {
        stations = List.copyOf(stations);
        pumps = List.copyOf(pumps);
        turbines = List.copyOf(turbines);
        jackets = List.copyOf(jackets);
        limits = List.copyOf(limits);
        warnings = List.copyOf(warnings);
    }

    /** @return whether every limit is kept */
    public boolean withinLimits() {
        return limits.stream().allMatch(Limit::kept);
    }
}
