package dev.penstock.turbomachinery;

import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.pump.PumpWork;
import dev.penstock.turbomachinery.turbine.TurbineDefaults;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import dev.penstock.turbomachinery.turbine.TurbineModel;
import dev.penstock.turbomachinery.turbine.TurbineWork;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.Propellant;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a cycle's solver pays for a pump or a turbine at each step. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TurbomachineryBenchmark {

    private final PumpModel pumps = new PumpModel();
    private final TurbineModel turbines = new TurbineModel();
    private Propellant oxygen;
    private FluidState inlet;
    private PumpDesign pump;
    private TurbineDesign turbine;
    private final PerfectGas gas = new PerfectGas(2650, 1.10);
    private double pressure = 20e6;

    @Setup
    public void choose() {
        oxygen = FluidLibrary.open().propellant("oxygen");
        inlet = oxygen.fluid().atPressureTemperature(0.4e6, 91);
        pump = pumps.choose(new PumpDuty(oxygen, inlet, pressure, 100), PumpDefaults.of(oxygen));
        turbine = turbines.choose(duty(), 2000, TurbineDefaults.of(false));
    }

    private TurbineDuty duty() {
        return new TurbineDuty(gas, pressure, 2650 * 900, 0.05 * pressure, 15);
    }

    /** Same tank, another discharge pressure each time. */
    @Benchmark
    public PumpWork pumpBehindATank() {
        pressure += 1;
        return pumps.work(new PumpDuty(oxygen, inlet, pressure, 100), pump);
    }

    @Benchmark
    public PumpSizing pumpAsSized() {
        pressure += 1;
        return pumps.size("pump", new PumpDuty(oxygen, inlet, pressure, 100), pump);
    }

    /** Perfect gas: the cost of wheel and triangles alone. */
    @Benchmark
    public TurbineWork turbineOnPerfectGas() {
        pressure += 1;
        return turbines.work(duty(), 2000, turbine);
    }
}
