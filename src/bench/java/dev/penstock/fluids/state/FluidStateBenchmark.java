package dev.penstock.fluids.state;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.table.FluidTables;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of one state along a jacket's march, with density, heat capacity, viscosity and conductivity read from it: by the
 * full model from pressure and temperature, from pressure and enthalpy with and without a start from the last state, and
 * by the table; and the time to build the table.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FluidStateBenchmark {

    private static final int STATIONS = 200;
    private static final double LOW = 8e6;
    private static final double HIGH = 16e6;

    @Param({"methane", "hydrogen", "rp-1"})
    private String id;

    private Fluid fluid;
    private FluidCursor full;
    private FluidCursor table;
    private double coldEnthalpy;
    private double hotEnthalpy;
    private double cold;
    private double hot;
    private int station;

    @Setup
    public void prepare() {
        Propellant propellant = FluidLibrary.open(Path.of("").toAbsolutePath()).propellant(id);
        fluid = propellant.fluid();
        cold = propellant.storageTemperature() * 1.1;
        hot = Math.min(cold * 4, 600);
        coldEnthalpy = fluid.atPressureTemperature(HIGH, cold).enthalpy();
        hotEnthalpy = fluid.atPressureTemperature(LOW, hot).enthalpy();
        full = fluid.cursor();
        table = FluidTables.of(fluid).cursor();
    }

    @TearDown(Level.Trial)
    public void close() {
        full.close();
        table.close();
    }

    private double share() {
        station = (station + 1) % STATIONS;
        return station / (STATIONS - 1.0);
    }

    private static double read(FluidCursor cursor) {
        return cursor.density() + cursor.isobaricHeatCapacity() + cursor.viscosity() + cursor.conductivity();
    }

    @Benchmark
    public double fullByPressureAndTemperature() {
        double share = share();
        full.setPressureTemperature(HIGH + (LOW - HIGH) * share, cold + (hot - cold) * share);
        return read(full);
    }

    @Benchmark
    public double fullByPressureAndEnthalpyFromTheLastState() {
        double share = share();
        full.setPressureEnthalpy(HIGH + (LOW - HIGH) * share, coldEnthalpy + (hotEnthalpy - coldEnthalpy) * share);
        return read(full);
    }

    @Benchmark
    public FluidState recordByPressureAndEnthalpyFromNothing() {
        double share = share();
        return fluid.atPressureEnthalpy(
                HIGH + (LOW - HIGH) * share, coldEnthalpy + (hotEnthalpy - coldEnthalpy) * share);
    }

    @Benchmark
    public double tableByPressureAndEnthalpy() {
        double share = share();
        table.setPressureEnthalpy(HIGH + (LOW - HIGH) * share, coldEnthalpy + (hotEnthalpy - coldEnthalpy) * share);
        return read(table);
    }

    @Benchmark
    public double tableByPressureAndTemperature() {
        double share = share();
        table.setPressureTemperature(HIGH + (LOW - HIGH) * share, cold + (hot - cold) * share);
        return read(table);
    }
}
