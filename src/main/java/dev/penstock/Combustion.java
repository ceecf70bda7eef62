package dev.penstock;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Two propellants burnt to chemical equilibrium and expanded without losses, the composition shifting all the way.
 *
 * @param chamberPressure pressure in the chamber (Pa, absolute)
 * @param temperature temperature in the chamber (K)
 * @param molarMass mass over moles of gas in the chamber (kg/mol)
 * @param isentropicExponent of the chamber gas with shifting composition (-)
 * @param characteristicVelocity ideal characteristic velocity (m/s)
 * @param moleFractions moles of each species per mole of mixture in the chamber (-), largest first
 * @param nozzles one for each area ratio asked for, in that order
 * @param warnings what a reader must know, one sentence each
 */
public record Combustion(
        double chamberPressure,
        double temperature,
        double molarMass,
        double isentropicExponent,
        double characteristicVelocity,
        Map<String, Double> moleFractions,
        List<Nozzle> nozzles,
        List<String> warnings) {

    /**
     * A nozzle that flows full.
     *
     * @param areaRatio exit over throat area (-)
     * @param exitPressure static pressure at the exit (Pa, absolute)
     * @param exitTemperature static temperature at the exit (K)
     * @param vacuumThrustCoefficient thrust in vacuum over chamber pressure and throat area (-)
     * @param vacuumIsp specific impulse in vacuum (s)
     */
    public record Nozzle(
            double areaRatio,
            double exitPressure,
            double exitTemperature,
            double vacuumThrustCoefficient,
            double vacuumIsp) {}

    /** Lists and maps are copied. */
    public Combustion {
        moleFractions = Collections.unmodifiableMap(new LinkedHashMap<>(moleFractions));
        nozzles = List.copyOf(nozzles);
        warnings = List.copyOf(warnings);
    }
}
