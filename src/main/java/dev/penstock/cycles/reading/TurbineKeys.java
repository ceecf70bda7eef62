package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineInputs;
import dev.penstock.turbomachinery.turbine.TurbineType;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Reads the table of a turbine; what is absent is left to the turbine model or takes the usual value. */
final class TurbineKeys {

    /** Key of the limit of every turbine. */
    private static final String LIMIT =
            ConceptTables.LIMITS.of(EngineInputs.TURBINE_TEMPERATURE_LIMIT).path();

    private TurbineKeys() {}

    /** Pressure ratio that the balance finds unless it is given. */
    static OptionalDouble openRatio(InputTable keys, boolean always) {
        return always ? OptionalDouble.empty() : keys.number(GasInputs.PRESSURE_RATIO, "closes the power balance");
    }

    static Supplier<TurbineDesign> read(
            InputTable keys, boolean oxygenRich, boolean cold, OptionalDouble temperatureLimit) {
        OptionalDouble efficiency = keys.number(TurbineInputs.EFFICIENCY);
        OptionalInt stages = keys.count(TurbineInputs.STAGES);
        TurbineType type = keys.read(TurbineInputs.TYPE);
        OptionalDouble diameter = keys.number(TurbineInputs.MEAN_DIAMETER);
        double pitch = keys.read(TurbineInputs.PITCH_LINE_SPEED_LIMIT);
        double annulus = keys.read(TurbineInputs.ANNULUS_SPEED_LIMIT, TurbineInputs.annulusSpeed(cold));
        double temperature = keys.read(
                TurbineInputs.INLET_TEMPERATURE_LIMIT,
                temperatureLimit.isPresent()
                        ? Usual.of(temperatureLimit.getAsDouble(), LIMIT, "").following(LIMIT)
                        : TurbineInputs.inletTemperature(oxygenRich));
        double nozzle = keys.read(TurbineInputs.NOZZLE_COEFFICIENT);
        double blade = keys.read(TurbineInputs.BLADE_COEFFICIENT);
        double factor = keys.read(TurbineInputs.EFFICIENCY_FACTOR);
        double coefficient = keys.read(TurbineInputs.DIAMETER_COEFFICIENT);
        double angle = keys.read(TurbineInputs.NOZZLE_ANGLE);
        double blades = keys.read(TurbineInputs.SMALLEST_BLADE_HEIGHT);
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
}
