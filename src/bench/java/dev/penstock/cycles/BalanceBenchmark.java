package dev.penstock.cycles;

import dev.penstock.fluids.FluidLibrary;
import java.nio.file.Path;
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
}
