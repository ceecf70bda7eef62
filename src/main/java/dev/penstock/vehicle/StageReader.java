package dev.penstock.vehicle;

import dev.penstock.input.InputTable;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.RelationsDryMass;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads one stage: a {@code [[stage]]} table, or the vehicle table itself where all stages are alike. */
final class StageReader {

    /** Thrust over weight at ignition where neither number of engines nor ratio is given: common practice, no source. */
    private static final double LIFTOFF_RATIO = 1.3;

    private static final double UPPER_STAGE_RATIO = 0.8;

    private final InputTable table;
    private final Optional<Path> folder;

    StageReader(InputTable table, Optional<Path> folder) {
        this.table = table;
        this.folder = folder;
    }

    StagePlan stage(String defaultName, int index, int count) {
        String name = folder.isPresent() || count > 1 && table.path().contains("stage")
                ? table.text("name", defaultName)
                : defaultName;
        Optional<Path> engine = folder.map(f -> f.resolve(table.text("engine")).normalize());
        OptionalDouble share = table.optionalQuantity("delta_v_share", Dimension.RATIO, Range.of(0.001, 1));
        OptionalDouble diameter = table.optionalQuantity("diameter", Dimension.LENGTH, Range.of(0.05, 100));
        return new StagePlan(
                name,
                engine,
                engines(index),
                share,
                diameter,
                allowances(),
                dryMass(index < count - 1),
                index == 0 ? groundPressure() : 0);
    }

    private double groundPressure() {
        return table.quantity(
                "ignition_pressure", Dimension.PRESSURE, Range.of(0, 1.2e5), Constants.STANDARD_ATMOSPHERE);
    }

    private EngineCount engines(int index) {
        List<Double> counts = table.quantities("engines", Dimension.RATIO, Range.of(1, EngineCount.MOST));
        List<Double> ratios = table.quantities("thrust_to_weight", Dimension.RATIO, Range.of(0.01, 50));
        double usual = index == 0 ? LIFTOFF_RATIO : UPPER_STAGE_RATIO;
        double ratio = ratios.isEmpty() ? usual : ratios.get(Math.min(index, ratios.size() - 1));
        int out = table.integer("engines_out", 0, 20, 0);
        double ratioOut = table.quantity("thrust_to_weight_engine_out", Dimension.RATIO, Range.of(0, 50), ratio);
        if (!counts.isEmpty() && !ratios.isEmpty()) {
            table.problem("engines", "given together with thrust_to_weight", "give one of the two, the other follows");
        }
        if (counts.isEmpty()) {
            return new EngineCount(OptionalInt.empty(), ratio, out, ratioOut);
        }
        double count = counts.get(Math.min(index, counts.size() - 1));
        if (count != Math.rint(count)) {
            table.problem("engines", Double.toString(count), "write a whole number");
            return EngineCount.of(1);
        }
        if (out >= count) {
            table.problem("engines_out", Integer.toString(out), "it must be fewer than the engines");
            return EngineCount.of(1);
        }
        return new EngineCount(OptionalInt.of((int) count), 0, out, 0);
    }

    private Allowances allowances() {
        InputTable t = table.table("allowances");
        Allowances usual = Allowances.USUAL;
        return new Allowances(
                t.quantity("residual", Dimension.RATIO, Range.of(0, 0.5), usual.residual()),
                t.quantity("startup_time", Dimension.TIME, Range.of(0, 60), usual.startupTime()),
                t.quantity("boil_off", Dimension.RATIO, Range.of(0, 0.4), usual.boilOff()),
                t.quantity("ullage", Dimension.RATIO, Range.of(0, 0.9), usual.ullage()));
    }

    private DryMassModel dryMass(boolean interstage) {
        InputTable t = table.table("dry_mass");
        double growth = t.quantity(
                "growth_margin", Dimension.RATIO, Range.of(0, 2), t.has("structural_coefficient") ? 0 : 0.15);
        OptionalDouble coefficient =
                t.optionalQuantity("structural_coefficient", Dimension.RATIO, Range.of(0.001, 0.9));
        if (coefficient.isPresent()) {
            return new StructuralCoefficient(coefficient.getAsDouble(), growth);
        }
        double fairing = t.quantity("fairing", Dimension.MASS, Range.NOT_NEGATIVE, 0);
        return new RelationsDryMass(interstage, fairing, growth);
    }
}
