package dev.penstock.vehicle.reading;

import dev.penstock.input.InputTable;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
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
        boolean ownTable = !table.path().isEmpty() && !table.path().equals("vehicle");
        String name = ownTable ? table.text("name", defaultName) : defaultName;
        Optional<Path> engine = engineFile(table, folder);
        OptionalDouble share = table.optionalQuantity("delta_v_share", Dimension.RATIO, Range.of(0.001, 1));
        OptionalDouble diameter = table.optionalQuantity("diameter", Dimension.LENGTH, Range.of(0.05, 100));
        EngineCount engines = engines(index);
        Recovery recovery = recovery();
        DryMassReader dryMass = new DryMassReader(table.table("dry_mass"));
        return new StagePlan(
                name,
                engine,
                engines,
                share,
                diameter,
                allowances(table),
                dryMass.model(index < count - 1, recovery.mode() != Recovery.Mode.NONE),
                dryMass.commonBulkhead(),
                recovery,
                index == 0 ? groundPressure() : 0);
    }

    static Optional<Path> engineFile(InputTable table, Optional<Path> folder) {
        return folder.map(f -> f.resolve(table.text("engine")).normalize());
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
            return new EngineCount(OptionalInt.empty(), ratio, 1, out, ratioOut);
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
        return new EngineCount(OptionalInt.of((int) count), 0, 1, out, 0);
    }

    static Allowances allowances(InputTable table) {
        InputTable t = table.table("allowances");
        Allowances usual = Allowances.USUAL;
        return new Allowances(
                t.quantity("residual", Dimension.RATIO, Range.of(0, 0.4), usual.residual()),
                t.quantity("startup_time", Dimension.TIME, Range.of(0, 60), usual.startupTime()),
                t.quantity("boil_off", Dimension.RATIO, Range.of(0, 0.4), usual.boilOff()),
                t.quantity("ullage", Dimension.RATIO, Range.of(0, 0.9), usual.ullage()));
    }

    private Recovery recovery() {
        InputTable t = table.table("recovery");
        Recovery.Mode mode = t.choice("mode", Recovery.Mode.class, Recovery.Mode.NONE);
        Recovery usual = Recovery.usual(mode);
        Range range = Range.of(0, 1e4);
        Recovery read = new Recovery(
                mode,
                t.quantity("boostback", Dimension.VELOCITY, range, usual.boostback()),
                t.quantity("entry", Dimension.VELOCITY, range, usual.entry()),
                t.quantity("landing", Dimension.VELOCITY, range, usual.landing()));
        return mode == Recovery.Mode.NONE ? Recovery.NONE : read;
    }
}
