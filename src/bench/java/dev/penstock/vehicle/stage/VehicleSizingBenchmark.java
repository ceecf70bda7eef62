package dev.penstock.vehicle.stage;

import dev.penstock.vehicle.FlownSizer;
import dev.penstock.vehicle.VehicleSizer;
import dev.penstock.vehicle.plan.Allowances;
import dev.penstock.vehicle.plan.AscentPlan;
import dev.penstock.vehicle.plan.DeltaVBudget;
import dev.penstock.vehicle.plan.EngineCount;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.plan.StagePlan;
import dev.penstock.vehicle.plan.VehiclePlan;

import dev.penstock.chamber.atmosphere.StandardAtmosphere1976;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.FlightProgress;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.engine.GivenEngine;
import dev.penstock.vehicle.engine.LoadedPropellant;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of sizing a vehicle with the split of least start mass, and of sizing it on the losses of its own flight. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class VehicleSizingBenchmark {

    @Param({"1", "2", "3"})
    private int stages;

    private EnginePerformance engine;
    private VehiclePlan plan;
    private double payload;

    @Setup
    public void prepare() {
        FluidLibrary fluids = FluidLibrary.open();
        LoadedPropellant oxygen = new LoadedPropellant(fluids.propellant("oxygen"), 1141, 90.2, 3e5);
        LoadedPropellant methane = new LoadedPropellant(fluids.propellant("methane"), 422, 111.6, 3e5);
        double flow = 8e5 / (360 * Constants.STANDARD_GRAVITY);
        engine = new GivenEngine("sample", 8e5, flow, 0.5, 15e6, 3.5, oxygen, methane, 800);
        AscentMission mission = new AscentMission(Planet.EARTH, 0.5, 200e3, 200e3, 35e3, 50, 1e4, 0.4);
        plan = new VehiclePlan(
                "sample",
                "",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                DeltaVBudget.of(stages == 1 ? 6000 : 9300),
                IntStream.range(0, stages).mapToObj(VehicleSizingBenchmark::stage).toList(),
                Optional.empty(),
                Optional.of(new AscentPlan(mission, 5, DragTable.USUAL)),
                Map.of(),
                List.of());
        payload = 4000;
    }

    private static StagePlan stage(int index) {
        return new StagePlan(
                "stage " + index,
                Optional.empty(),
                EngineCount.lifting(index == 0 ? 1.35 : 0.8),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Allowances.USUAL,
                new BuiltUpDryMass(DryMassDesign.PLAIN),
                false,
                Recovery.NONE,
                index == 0 ? Constants.STANDARD_ATMOSPHERE : 0);
    }

    private VehiclePlan next() {
        payload = payload > 5000 ? 4000 : payload * 1.01;
        return plan.withMasses(OptionalDouble.of(payload), OptionalDouble.empty());
    }

    /** @return the vehicle, split of least start mass */
    @Benchmark
    public VehicleSizing sizing() {
        return new VehicleSizer().size(next(), file -> engine);
    }

    /** @return the vehicle on the losses of its flight; a single stage goes nowhere and is sized only */
    @Benchmark
    public Object flown() {
        return stages == 1
                ? sizing()
                : new FlownSizer(new StandardAtmosphere1976()).size(next(), file -> engine, FlightProgress.NONE);
    }
}
