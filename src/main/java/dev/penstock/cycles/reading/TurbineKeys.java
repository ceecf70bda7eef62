package dev.penstock.cycles.reading;

import dev.penstock.provenance.UncertainInput;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.turbine.TurbineDefaults;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineType;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Reads the table of a turbine; what is absent is left to the turbine model or takes the usual value. */
final class TurbineKeys {

    private static final Range RATIOS = Range.of(1.01, 100);

    private TurbineKeys() {}

    /** Pressure ratio with a default. */
    static OptionalDouble ratio(ConceptKeys keys, double usual, String basis) {
        return OptionalDouble.of(keys.quantity("pressure_ratio", Dimension.RATIO, RATIOS, usual, basis));
    }

    /** Pressure ratio that the balance finds unless it is given. */
    static OptionalDouble openRatio(ConceptKeys keys, boolean always) {
        if (always) {
            return OptionalDouble.empty();
        }
        return keys.optional("pressure_ratio", Dimension.RATIO, RATIOS, "closes the power balance");
    }

    static Supplier<TurbineDesign> read(
            ConceptKeys keys, boolean oxygenRich, boolean cold, OptionalDouble temperatureLimit) {
        TurbineDesign usual = TurbineDefaults.of(oxygenRich, cold);
        List<UncertainInput> uncertain = TurbineDefaults.uncertain(oxygenRich, cold);
        OptionalDouble efficiency = keys.optional(
                "efficiency", Dimension.RATIO, Range.of(0.05, 1), "velocity triangles at the blade speed");
        OptionalInt stages = keys.optionalCount("stages", 1, 10, "by pressure ratio and velocity ratio");
        TurbineType type = keys.choice("type", TurbineType.class, TurbineType.AUTOMATIC, "by velocity ratio");
        OptionalDouble diameter = keys.optional(
                "mean_diameter", Dimension.LENGTH, Range.of(0.01, 5), "best velocity ratio within the limits");
        double pitch = usual("pitch_line_speed_limit", keys, Dimension.VELOCITY, Range.of(20, 1000), uncertain);
        double annulus = usual("annulus_speed_limit", keys, Dimension.VELOCITY, Range.of(20, 1500), uncertain);
        double temperature = temperatureLimit.isPresent()
                ? keys.quantity(
                        "inlet_temperature_limit",
                        Dimension.TEMPERATURE,
                        Range.of(200, 3000),
                        temperatureLimit.getAsDouble(),
                        "limits.turbine_temperature")
                : usual("inlet_temperature_limit", keys, Dimension.TEMPERATURE, Range.of(200, 3000), uncertain);
        double nozzle = usual("nozzle_coefficient", keys, Dimension.RATIO, Range.of(0.8, 1), uncertain);
        double blade = usual("blade_coefficient", keys, Dimension.RATIO, Range.of(0.5, 1), uncertain);
        double factor = usual("efficiency_factor", keys, Dimension.RATIO, Range.of(0.3, 1), uncertain);
        double coefficient = usual("diameter_coefficient", keys, Dimension.RATIO, Range.of(0.005, 0.1), uncertain);
        double angle = keys.quantity(
                "nozzle_angle",
                Dimension.ANGLE,
                Range.of(Math.toRadians(8), Math.toRadians(45)),
                usual.nozzleAngle(),
                ConceptKeys.COMMON);
        double blades = keys.quantity(
                "smallest_blade_height",
                Dimension.LENGTH,
                Range.of(5e-4, 0.05),
                usual.minimumBladeHeight(),
                ConceptKeys.COMMON);
        return () -> new TurbineDesign(
                efficiency,
                stages,
                type,
                diameter,
                pitch,
                annulus,
                temperature,
                angle,
                nozzle,
                blade,
                factor,
                coefficient,
                blades,
                oxygenRich);
    }

    private static double usual(
            String key, ConceptKeys keys, Dimension dimension, Range range, List<UncertainInput> uncertain) {
        UncertainInput input = uncertain.stream()
                .filter(u -> u.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no usual value of " + key));
        return keys.quantity(key, dimension, range, input.spread().mode(), input.source());
    }
}
