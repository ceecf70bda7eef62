package dev.penstock.cooling;

import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.WallLibrary;

import dev.penstock.ProcessorTime;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
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

/** Time of a jacket of 200 stations: on tables, on the full fluid models, and with its channels sized. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class JacketBenchmark {

    @Param({"methane", "hydrogen"})
    private String fuel;

    private JacketSolver solver;
    private JacketSolver full;
    private JacketCase open;
    private JacketCase sized;

    @Setup
    public void prepare() {
        WallLibrary walls = WallLibrary.load(Path.of("fluids/walls"));
        solver = new JacketSolver(walls);
        full = JacketSolver.onFullModels(walls);
        Cases.Engine engine = fuel.equals("methane") ? Cases.methane() : Cases.hydrogen();
        open = engine.fuelCooled(1.8 * engine.chamberPressure(), Jackets.automatic().withCells(200));
        sized = solver.sized(open);
    }

    @Benchmark
    public double onTables() {
        return solver.solve(sized).heatLoad();
    }

    @Benchmark
    public double onFullModels() {
        return full.solve(sized).heatLoad();
    }

    @Benchmark
    public double withSizing() {
        return solver.solve(open).heatLoad();
    }

    /**
     * Processor time instead of wall-clock time.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        for (String fuel : new String[] {"methane", "hydrogen"}) {
            JacketBenchmark bench = new JacketBenchmark();
            bench.fuel = fuel;
            bench.prepare();
            System.out.printf(
                    Locale.ROOT,
                    "%-10s on tables %.2f ms, with sizing %.2f ms, heat and pressure drop alone %.2f ms, full models %.1f ms%n",
                    fuel,
                    ProcessorTime.best(60, bench::onTables),
                    ProcessorTime.best(60, bench::withSizing),
                    ProcessorTime.best(60, () -> bench.solver.load(bench.sized).heatLoad()),
                    ProcessorTime.best(5, bench::onFullModels));
        }
    }
}
