package dev.penstock.vehicle.reading;

import dev.penstock.errors.InvalidInput;
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
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads which engine a stage or its boosters have: by its concept file, or stated by its figures, so that a first estimate needs no
 * concept file.
 */
final class EngineReader {

    /** Absolute tank pressure (Pa) of a pump-fed stage without a concept: common practice, no source. */
    private static final double TANK_PRESSURE = 3e5;

    private final InputTable table;
    private final FluidLibrary fluids;

    EngineReader(InputTable table, FluidLibrary fluids) {
        this.table = table;
        this.fluids = fluids;
    }

    /** An engine by its concept file or stated by its figures; neither where the concept carries the vehicle. */
    record Named(Optional<Path> file, Optional<EnginePerformance> stated) {}

    /**
     * @param folder where the vehicle file is; empty where the engine's concept carries the vehicle
     * @param name name of the stage
     * @param ambient ambient pressure where it ignites (Pa)
     * @return its engine; neither file nor figures after a noted problem
     */
    Named engine(Optional<Path> folder, String name, double ambient) {
        if (folder.isPresent() && (table.has(StageInputs.ISP) || table.has(StageInputs.THRUST))) {
            return new Named(Optional.empty(), stated(name, ambient));
        }
        return new Named(folder.flatMap(f -> named().map(text -> f.resolve(text).normalize())), Optional.empty());
    }

    private Optional<String> named() {
        if (!table.has(StageInputs.ENGINE)) {
            table.problem(
                    StageInputs.ENGINE,
                    "missing",
                    "name a concept file, for example \"../heron.toml\", or state isp and thrust");
        }
        return table.find(StageInputs.ENGINE);
    }

    private Optional<EnginePerformance> stated(String name, double ambient) {
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
                Usual.common(
                        thrust.orElse(0) / (StageInputs.USUAL_ENGINE_THRUST_TO_WEIGHT * Constants.STANDARD_GRAVITY)));
        if (isp.isEmpty() || thrust.isEmpty() || oxidizer.isEmpty() || fuel.isEmpty()) {
            return Optional.empty();
        }
        if (area * ambient >= thrust.getAsDouble()) {
            table.problem(
                    StageInputs.EXIT_AREA,
                    area + " m²",
                    String.format(
                            Locale.ROOT,
                            "it leaves no thrust at the %.4g kPa where it ignites; write less than %.4g m²",
                            ambient / 1e3,
                            thrust.getAsDouble() / ambient));
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
            return Optional.of(new LoadedPropellant(propellant, loaded, temperature, pressure));
        } catch (InvalidInput e) {
            e.problems().forEach(problem -> table.problem(key, problem.value(), problem.allowed()));
            return Optional.empty();
        }
    }
}
