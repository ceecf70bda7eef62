package dev.penstock.vehicle.reading;

import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.BoosterPlan;
import dev.penstock.vehicle.plan.EngineCount;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a {@code [boosters]} table. */
final class BoosterReader {

    private final InputTable table;
    private final Optional<Path> folder;

    BoosterReader(InputTable table, Optional<Path> folder) {
        this.table = table;
        this.folder = folder;
    }

    /** @return the boosters; empty after a noted problem */
    Optional<BoosterPlan> boosters() {
        int count = table.integer("count", 1, 12, 2);
        int engines = table.integer("engines", 1, EngineCount.MOST, 1);
        double propellant = table.quantity("propellant", Dimension.MASS, Range.POSITIVE);
        OptionalDouble diameter = table.optionalQuantity("diameter", Dimension.LENGTH, Range.of(0.05, 100));
        Optional<Path> engine = StageReader.engineFile(table, folder);
        Allowances allowances = StageReader.allowances(table);
        DryMassReader dryMass = new DryMassReader(table.table("dry_mass"));
        var model = dryMass.model(false, false);
        return propellant > 0
                ? Optional.of(new BoosterPlan(count, engine, engines, propellant, diameter, allowances, model))
                : Optional.empty();
    }
}
