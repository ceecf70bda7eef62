package dev.penstock.cycles.questions;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.pump.PumpPoint;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A built engine away from its design point.
 *
 * @param command what it was asked to do
 * @param chamberPressure nozzle stagnation pressure (Pa)
 * @param mixtureRatio oxidizer over fuel leaving the tanks (-)
 * @param vacuumThrust thrust in vacuum (N)
 * @param seaLevelThrust thrust at one standard atmosphere (N); zero where the throat is not sonic against it
 * @param vacuumIsp specific impulse in vacuum (s)
 * @param massFlow all flow leaving the tanks (kg/s)
 * @param diluentFlow part of it that is a third fluid (kg/s)
 * @param nozzles what it pushes with
 * @param pumps main pumps by name, with stall and cavitation margins
 * @param gasTemperatures temperature before each turbine by name (K)
 * @param coolantTemperatureRise largest temperature rise of a coolant (K), if there is a jacket
 * @param peakWallTemperature hottest wall (K), if there is a jacket
 * @param limits margins held against their bounds
 * @param residualWorst largest relative residual (-)
 */
public record OperatingPoint(
        OperatingCommand command,
        double chamberPressure,
        double mixtureRatio,
        double vacuumThrust,
        double seaLevelThrust,
        double vacuumIsp,
        double massFlow,
        double diluentFlow,
        EngineBalance.Nozzles nozzles,
        Map<String, PumpPoint> pumps,
        Map<String, Double> gasTemperatures,
        OptionalDouble coolantTemperatureRise,
        OptionalDouble peakWallTemperature,
        List<LimitCheck> limits,
        double residualWorst) {

    public OperatingPoint {
        pumps = Collections.unmodifiableMap(new LinkedHashMap<>(pumps));
        gasTemperatures = Collections.unmodifiableMap(new LinkedHashMap<>(gasTemperatures));
        limits = List.copyOf(limits);
    }

    /** @return temperature of the hottest gas before a turbine (K); empty without turbines */
    public OptionalDouble hottestGas() {
        return gasTemperatures.values().stream()
                .mapToDouble(Double::doubleValue)
                .max();
    }

    /** @return oxidizer flow leaving its tank (kg/s) */
    public double oxidizerFlow() {
        return (massFlow - diluentFlow) * mixtureRatio / (1 + mixtureRatio);
    }

    /** @return fuel flow leaving its tank (kg/s) */
    public double fuelFlow() {
        return (massFlow - diluentFlow) / (1 + mixtureRatio);
    }

    /** @return whether every margin is kept */
    public boolean withinLimits() {
        return limits.stream().allMatch(LimitCheck::met);
    }
}
