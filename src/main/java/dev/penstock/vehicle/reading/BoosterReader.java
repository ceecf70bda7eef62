package dev.penstock.vehicle.reading;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.mass.DryMassInputs;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.BoosterPlan;
import dev.penstock.vehicle.plan.StageInputs;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a {@code [boosters]} table. */
final class BoosterReader {

    private final InputTable table;
    private final Optional<Path> folder;
    private final FluidLibrary fluids;

    BoosterReader(InputTable table, Optional<Path> folder, FluidLibrary fluids) {
        this.table = table;
        this.folder = folder;
        this.fluids = fluids;
    }

    /** @return the boosters; empty after a noted problem */
    Optional<BoosterPlan> boosters() {
        int count = table.read(StageInputs.COUNT);
        double propellant = table.read(StageInputs.PROPELLANT);
        OptionalDouble diameter = table.number(StageInputs.DIAMETER);
        SolidReader solid = new SolidReader(table);
        if (solid.solid()) {
            return solid.booster(propellant).map(booster -> BoosterPlan.solid(count, booster, diameter));
        }
        int engines = table.read(StageInputs.BOOSTER_ENGINES);
        EngineReader.Named engine =
                new EngineReader(table, fluids).engine(folder, "the boosters", Constants.STANDARD_ATMOSPHERE);
        Allowances allowances = StageReader.allowances(table);
        DryMassReader dryMass = new DryMassReader(table.table(DryMassInputs.GROUP), fluids);
        var model = dryMass.model(false, false);
        return propellant > 0
                ? Optional.of(new BoosterPlan(
                        count,
                        engine.file(),
                        engines,
                        propellant,
                        diameter,
                        allowances,
                        model,
                        engine.stated(),
                        Optional.empty()))
                : Optional.empty();
    }
}
