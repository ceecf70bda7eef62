package dev.penstock.cycles;

import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.LimitResult;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.Effort;
import dev.penstock.cycles.sheet.EngineBalance;

import dev.penstock.ProcessorTime;
import dev.penstock.fluids.FluidLibrary;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
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

/** Time of a balance and of a limit search, from nothing but a concept, on warm models. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
public class BalanceBenchmark {

    private static final int REPEATS = 20;

    @Param({"pressure-fed", "gas-generator", "staged-fuel-rich", "staged-oxygen-rich", "full-flow", "expander"})
    private String cycle;

    private EngineStudy study;
    private Concept concept;

    @Setup
    public void prepare() {
        Cycle kind = Cycle.all().stream()
                .filter(c -> c.id().equals(cycle))
                .findFirst()
                .orElseThrow();
        study = EngineStudy.open(Path.of("").toAbsolutePath());
        concept = new ConceptReader(FluidLibrary.open())
                .parse(cycle, kind.example().shortest(cycle, "Benchmark"), Map.of());
    }

    @Benchmark
    public EngineBalance balance() {
        return study.balance(concept);
    }

    @Benchmark
    public LimitResult limit() {
        return study.limit(concept);
    }

    /**
     * Processor time instead of wall-clock time, and the effort behind it.
     *
     * @param arguments cycles; all of the benchmark if there are none
     */
    public static void main(String[] arguments) throws NoSuchFieldException {
        String[] all = BalanceBenchmark.class
                .getDeclaredField("cycle")
                .getAnnotation(Param.class)
                .value();
        System.out.println("milliseconds of processor time, best of " + REPEATS);
        for (String cycle : arguments.length > 0 ? arguments : all) {
            BalanceBenchmark bench = new BalanceBenchmark();
            bench.cycle = cycle;
            bench.prepare();
            Effort effort = bench.balance().effort();
            double balance = ProcessorTime.best(REPEATS, bench::balance);
            double limit = ProcessorTime.best(REPEATS, bench::limit);
            LimitResult reached = bench.limit();
            System.out.printf(
                    Locale.ROOT,
                    "%-20s balance %7.1f   limit %7.1f   (%s; %d pressures tried, %.4f MPa)%n",
                    cycle,
                    balance,
                    limit,
                    effort,
                    reached.points().size(),
                    reached.chamberPressure() / 1e6);
        }
    }
}
