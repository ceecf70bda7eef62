package dev.penstock.vehicle.reading;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.Input;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.GivenEngine;
import dev.penstock.vehicle.engine.LoadedPropellant;
import dev.penstock.vehicle.plan.StageInputs;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads an engine that a stage or its boosters state by its figures, so that a first estimate needs no concept file. */
final class StatedEngineReader {

    /** Thrust over weight of an engine whose mass is not stated: common practice, no source. */
    private static final double USUAL_THRUST_TO_WEIGHT = 70;

    /** Absolute tank pressure (Pa) of a pump-fed stage without a concept: common practice, no source. */
    private static final double TANK_PRESSURE = 3e5;

    private final InputTable table;
    private final FluidLibrary fluids;

    StatedEngineReader(InputTable table, FluidLibrary fluids) {
        this.table = table;
        this.fluids = fluids;
    }

    /** @return whether the table states an engine */
    boolean stated() {
        return table.has(StageInputs.ISP) || table.has(StageInputs.THRUST);
    }

    /**
     * @param name name of the stage
     * @return the engine; empty after a noted problem
     */
    Optional<EnginePerformance> engine(String name) {
        OptionalDouble isp = table.number(StageInputs.ISP);
        OptionalDouble thrust = table.number(StageInputs.THRUST);
        double area = table.read(StageInputs.EXIT_AREA);
        double ratio = table.read(StageInputs.MIXTURE_RATIO);
        Optional<LoadedPropellant> oxidizer =
                propellant(StageInputs.OXIDIZER, UsualFluids.oxidizer(), table.number(StageInputs.OXIDIZER_DENSITY));
        Optional<LoadedPropellant> fuel =
                propellant(StageInputs.FUEL, UsualFluids.fuel(), table.number(StageInputs.FUEL_DENSITY));
        if (table.has(StageInputs.ENGINE)) {
            table.problem(
                    StageInputs.ENGINE,
                    "given together with isp or thrust",
                    "name a concept file or state the figures");
        }
        if (!table.has(StageInputs.ISP)) {
            table.problem(StageInputs.ISP, "missing", "a stated engine needs isp beside thrust, for example \"330 s\"");
        }
        if (!table.has(StageInputs.THRUST)) {
            table.problem(
                    StageInputs.THRUST, "missing", "a stated engine needs thrust beside isp, for example \"500 kN\"");
        }
        double mass = table.read(
                StageInputs.STATED_ENGINE_MASS,
                Usual.common(thrust.orElse(0) / (USUAL_THRUST_TO_WEIGHT * Constants.STANDARD_GRAVITY)));
        if (isp.isEmpty() || thrust.isEmpty() || oxidizer.isEmpty() || fuel.isEmpty()) {
            return Optional.empty();
        }
        if (area * Constants.STANDARD_ATMOSPHERE >= thrust.getAsDouble()) {
            table.problem(
                    StageInputs.EXIT_AREA,
                    area + " m²",
                    "it leaves no thrust at sea level; write less than "
                            + thrust.getAsDouble() / Constants.STANDARD_ATMOSPHERE + " m²");
            return Optional.empty();
        }
        return Optional.of(GivenEngine.ofIsp(
                "engine of " + name,
                thrust.getAsDouble(),
                isp.getAsDouble(),
                area,
                ratio,
                oxidizer.get(),
                fuel.get(),
                mass));
    }

    private Optional<LoadedPropellant> propellant(Input<String> key, String usual, OptionalDouble density) {
        String id = table.read(key, Usual.of(usual, "the usual one", ""));
        try {
            Propellant propellant = fluids.propellant(id);
            double temperature = propellant.storageTemperature();
            double pressure = Math.max(TANK_PRESSURE, propellant.storagePressure());
            double loaded = density.isPresent()
                    ? density.getAsDouble()
                    : propellant
                            .fluid()
                            .atPressureTemperature(pressure, temperature)
                            .density();
            return Optional.of(new LoadedPropellant(
                    propellant, loaded, temperature, pressure, vapourPressure(propellant, temperature)));
        } catch (InvalidInput e) {
            e.problems().forEach(problem -> table.problem(key, problem.value(), problem.allowed()));
            return Optional.empty();
        }
    }

    private static double vapourPressure(Propellant propellant, double temperature) {
        try {
            return propellant.fluid().vapourPressure(temperature);
        } catch (PenstockException noVapourPressureThere) {
            return 0;
        }
    }
}
