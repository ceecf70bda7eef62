package dev.penstock.vehicle.reading;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Notation;
import dev.penstock.vehicle.mass.BodyShape;
import dev.penstock.vehicle.mass.DryMassInputs;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StageInputs;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehicleInputs;
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

    /** Ideal gain (m/s) of a first stage at which the air is thin enough to drop the fairing: judgement, a flight finds it. */
    private static final double FIRST_STAGE_FAIRING = 4000;

    private static final Notation METRES = Notation.significant("m", 4);

    private final InputTable table;
    private final Optional<Path> folder;
    private final FluidLibrary fluids;

    StageReader(InputTable table, Optional<Path> folder, FluidLibrary fluids) {
        this.table = table;
        this.folder = folder;
        this.fluids = fluids;
    }

    StagePlan stage(String defaultName, int index, int count) {
        boolean ownTable = !table.path().isEmpty() && !table.path().equals(VehicleInputs.IN_CONCEPT.key());
        String name = ownTable ? table.read(StageInputs.NAME, Usual.of(defaultName, "its number", "")) : defaultName;
        double ambient = index == 0 ? groundPressure() : 0;
        EngineReader.Named engine = new EngineReader(table, fluids).engine(folder, name, ambient);
        OptionalDouble share = table.number(StageInputs.DELTA_V_SHARE);
        OptionalDouble diameter = table.number(StageInputs.DIAMETER);
        EngineCount engines = engines(index);
        Recovery recovery = recovery();
        DryMassReader dryMass = new DryMassReader(table.table(DryMassInputs.GROUP), fluids);
        return new StagePlan(
                name,
                engine.file(),
                engines,
                share,
                diameter,
                allowances(table),
                dryMass.model(index < count - 1, recovery.mode() != Recovery.Mode.NONE),
                dryMass.commonBulkhead(),
                recovery,
                ambient,
                index == 0 ? FIRST_STAGE_FAIRING : 0,
                body(),
                engine.stated());
    }

    private Optional<BodyShape> body() {
        InputTable t = table.table(StageInputs.BODY);
        if (!table.has(StageInputs.BODY.key())) {
            return Optional.empty();
        }
        BodyShape.Kind kind = t.read(StageInputs.SHAPE);
        double base = t.read(StageInputs.BASE_DIAMETER);
        OptionalDouble height = t.number(StageInputs.HEIGHT);
        OptionalDouble top = t.number(StageInputs.TOP_DIAMETER);
        double filling = t.read(StageInputs.FILLING);
        if (kind != BodyShape.Kind.SPHERE && height.isEmpty()) {
            t.problem(StageInputs.HEIGHT, "missing", "only a sphere needs none; write for example height = \"20 m\"");
        }
        if (kind == BodyShape.Kind.SPHERE && height.isPresent()) {
            t.problem(
                    StageInputs.HEIGHT,
                    METRES.writeWithUnit(height.getAsDouble()),
                    "a sphere is as high as its base_diameter; leave it out");
        }
        if (kind != BodyShape.Kind.TAPERED && top.isPresent()) {
            t.problem(
                    StageInputs.TOP_DIAMETER,
                    METRES.writeWithUnit(top.getAsDouble()),
                    "only a tapered body has one; leave it out");
        }
        if (kind == BodyShape.Kind.TAPERED && top.isEmpty()) {
            t.problem(StageInputs.TOP_DIAMETER, "missing", "a tapered body needs it; write for example \"3 m\"");
        }
        return base > 0
                ? Optional.of(new BodyShape(kind, height.orElse(base), base, top.orElse(0), filling))
                : Optional.empty();
    }

    private double groundPressure() {
        return table.read(StageInputs.IGNITION_PRESSURE);
    }

    private EngineCount engines(int index) {
        List<Double> counts = table.find(StageInputs.ENGINES).orElse(List.of());
        List<Double> ratios = table.find(StageInputs.THRUST_TO_WEIGHT).orElse(List.of());
        double usual = index == 0 ? LIFTOFF_RATIO : UPPER_STAGE_RATIO;
        double ratio = ratios.isEmpty() ? usual : ratios.get(Math.min(index, ratios.size() - 1));
        int out = table.read(StageInputs.ENGINES_OUT);
        double ratioOut =
                table.read(StageInputs.THRUST_TO_WEIGHT_ENGINE_OUT, Usual.of(ratio, "as thrust_to_weight", ""));
        if (!counts.isEmpty() && !ratios.isEmpty()) {
            table.problem(
                    StageInputs.ENGINES,
                    "given together with thrust_to_weight",
                    "give one of the two, the other follows");
        }
        if (counts.isEmpty()) {
            return new EngineCount(OptionalInt.empty(), ratio, 1, out, ratioOut, ratios.isEmpty() && out == 0);
        }
        double count = counts.get(Math.min(index, counts.size() - 1));
        if (count != Math.rint(count)) {
            table.problem(StageInputs.ENGINES, Double.toString(count), "write a whole number");
            return EngineCount.of(1);
        }
        if (out >= count) {
            table.problem(StageInputs.ENGINES_OUT, Integer.toString(out), "it must be fewer than the engines");
            return EngineCount.of(1);
        }
        return new EngineCount(OptionalInt.of((int) count), 0, 1, out, 0);
    }

    static Allowances allowances(InputTable table) {
        InputTable t = table.table(StageInputs.ALLOWANCES);
        return new Allowances(
                t.read(StageInputs.RESIDUAL),
                t.read(StageInputs.STARTUP_TIME),
                t.read(StageInputs.BOIL_OFF),
                t.read(StageInputs.ULLAGE),
                t.read(StageInputs.HEAT_LEAK),
                0);
    }

    private Recovery recovery() {
        InputTable t = table.table(StageInputs.RECOVERY);
        Recovery.Mode mode = t.read(StageInputs.MODE);
        Recovery usual = Recovery.usual(mode);
        Recovery read = new Recovery(
                mode,
                t.read(StageInputs.BOOSTBACK, Usual.common(usual.boostback())),
                t.read(StageInputs.ENTRY, Usual.common(usual.entry())),
                t.read(StageInputs.LANDING, Usual.common(usual.landing())),
                new Recovery.Open(!t.has(StageInputs.BOOSTBACK), !t.has(StageInputs.LANDING)));
        return mode == Recovery.Mode.NONE ? Recovery.NONE : read;
    }
}
