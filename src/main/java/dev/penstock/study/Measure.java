package dev.penstock.study;

import dev.penstock.cooling.JacketResult;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.PumpSizing;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A figure by which engines are compared, swept and sampled.
 *
 * @param key key in documents, ending in the SI unit
 * @param name name for people
 * @param unit SI unit as text
 * @param better +1 if more is better, −1 if less is, 0 if neither
 * @param value the figure of a balance, SI; empty where a cycle does not have it
 */
public record Measure(String key, String name, String unit, int better, Function<EngineBalance, OptionalDouble> value) {

    /** All figures, the most asked-for first. */
    public static final List<Measure> ALL = List.of(
            of("isp_vacuum_s", "specific impulse, vacuum", "s", 1, b -> b.engine()
                    .vacuumIsp()),
            of("isp_sea_level_s", "specific impulse, sea level", "s", 1, b -> b.engine()
                    .seaLevelIsp()),
            of("thrust_vacuum_N", "thrust, vacuum", "N", 0, b -> b.engine().vacuumThrust()),
            of("chamber_pressure_Pa", "chamber pressure", "Pa", 0, b -> b.engine()
                    .chamberPressure()),
            of("mixture_ratio", "mixture ratio", "", 0, b -> b.engine().mixtureRatio()),
            of("mass_flow_kg_s", "mass flow", "kg/s", 0, b -> b.engine().massFlow()),
            of("mass_kg", "engine mass, dry", "kg", -1, b -> b.mass().total().mode()),
            of("thrust_to_weight", "thrust to weight", "", 1, b -> b.mass()
                    .thrustToWeight()
                    .mode()),
            of("exit_diameter_m", "exit diameter", "m", -1, b -> b.engine().exitDiameter()),
            new Measure("turbine_temperature_K", "hottest turbine gas", "K", -1, b -> b.turbines().stream()
                    .mapToDouble(t -> t.inlet().temperature())
                    .max()),
            new Measure("turbine_pressure_ratio", "highest turbine pressure ratio", "", 0, b -> b.turbines().stream()
                    .mapToDouble(t -> t.inlet().pressure() / t.outlet().pressure())
                    .max()),
            new Measure("discharge_pressure_Pa", "highest pump discharge", "Pa", -1, b -> b.pumps().stream()
                    .mapToDouble(p -> p.duty().dischargePressure())
                    .max()),
            new Measure("pump_power_W", "pump power, all", "W", -1, Measure::pumpPower),
            cooled("coolant_temperature_rise_K", "coolant temperature rise", "K", JacketResult::coolantTemperatureRise),
            cooled("coolant_pressure_drop_Pa", "coolant pressure drop", "Pa", JacketResult::pressureDrop),
            cooled("peak_wall_temperature_K", "hottest wall", "K", JacketResult::peakWallTemperature),
            cooled("peak_heat_flux_W_m2", "peak heat flux", "W/m²", JacketResult::peakHeatFlux),
            new Measure("tightest_margin", "margin of the tightest limit", "", 1, b -> tightest(b)
                    .map(LimitCheck::margin)
                    .map(OptionalDouble::of)
                    .orElse(OptionalDouble.empty())));

    private static Measure of(String key, String name, String unit, int better, ToDoubleFunction<EngineBalance> value) {
        return new Measure(key, name, unit, better, b -> OptionalDouble.of(value.applyAsDouble(b)));
    }

    private static Measure cooled(String key, String name, String unit, ToDoubleFunction<JacketResult> value) {
        return new Measure(
                key,
                name,
                unit,
                -1,
                b -> b.cooling().isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(value.applyAsDouble(b.cooling().get())));
    }

    private static OptionalDouble pumpPower(EngineBalance b) {
        return b.pumps().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        b.pumps().stream().mapToDouble(PumpSizing::power).sum());
    }

    /**
     * @param balance balanced engine
     * @return its limit with the least margin: what binds it
     */
    public static Optional<LimitCheck> tightest(EngineBalance balance) {
        return balance.limits().stream().min(Comparator.comparingDouble(LimitCheck::margin));
    }

    /**
     * @param key key of a figure
     * @return the figure, if there is one
     */
    public static Optional<Measure> named(String key) {
        return ALL.stream().filter(m -> m.key().equals(key)).findFirst();
    }
}
