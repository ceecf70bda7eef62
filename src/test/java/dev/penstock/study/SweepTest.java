package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class SweepTest {

    private static final Path CONCEPT = Path.of("cycles/dunlin.toml");
    private static final Axis PRESSURE = Axis.parse("engine.chamber_pressure=0.8..1.2MPa:3");
    private static final Axis RATIO = Axis.parse("propellants.mixture_ratio=1.5,1.8");

    private final Sweep sweep = new Sweep(new EngineRuns(HomeFolder.find(), FluidLibrary.open()));

    @Test
    void theLastAxisMovesFastest() {
        Sweep.Result result = sweep.run(CONCEPT, Map.of(), List.of(PRESSURE, RATIO), Progress.NONE, () -> false);
        assertThat(result.complete()).isTrue();
        assertThat(result.points().stream().map(p -> String.join(" ", p.values())))
                .containsExactly("0.8 MPa 1.5", "0.8 MPa 1.8", "1 MPa 1.5", "1 MPa 1.8", "1.2 MPa 1.5", "1.2 MPa 1.8");
        assertThat(result.points()).allSatisfy(p -> {
            double pressure = Axis.numberOf(p.values().get(0)).orElseThrow() * 1e6;
            assertThat(p.balance().orElseThrow().engine().chamberPressure()).isEqualTo(pressure);
        });
    }

    @Test
    void aPointIsTheSameAsItsOwnBalance() {
        Sweep.Result result = sweep.run(CONCEPT, Map.of(), List.of(RATIO), Progress.NONE, () -> false);
        EngineRuns runs = new EngineRuns(HomeFolder.find(), FluidLibrary.open());
        double alone = runs.study()
                .balance(runs.read(CONCEPT, Map.of("propellants.mixture_ratio", "1.8")))
                .engine()
                .vacuumIsp();
        assertThat(result.points().get(1).balance().orElseThrow().engine().vacuumIsp())
                .isCloseTo(alone, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void aCombinationWithoutASolutionSaysWhy() {
        Axis high = Axis.parse("propellants.mixture_ratio=1.6,400");
        Sweep.Result result = sweep.run(CONCEPT, Map.of(), List.of(high), Progress.NONE, () -> false);
        assertThat(result.complete()).isTrue();
        assertThat(result.points().get(0).balance()).isPresent();
        assertThat(result.points().get(1).failure().orElseThrow()).contains("propellants.mixture_ratio is 400");
    }

    @Test
    void cancellingKeepsWhatIsDone() {
        AtomicInteger ended = new AtomicInteger();
        Sweep.Result result = sweep.run(
                CONCEPT,
                Map.of(),
                List.of(PRESSURE, RATIO),
                (done, of, what) -> ended.set(done),
                () -> ended.get() >= 2);
        assertThat(result.complete()).isFalse();
        assertThat(result.points()).hasSize(2).allMatch(p -> p.balance().isPresent());
    }

    @Test
    void aBandHoldsTheLikelyFigureAndLeavesTheSweptInputAlone() {
        List<String> told = new java.util.ArrayList<>();
        Sweep.Result result = sweep.run(
                CONCEPT, Map.of(), List.of(PRESSURE), 16, (done, of, what) -> told.add(done + "/" + of), () -> false);
        assertThat(told).hasSize(3 * 17).endsWith("51/51");
        assertThat(result.points()).allSatisfy(p -> {
            SweepBand band = p.band().orElseThrow();
            assertThat(band.closed()).isEqualTo(16);
            SweepBand.Span impulse =
                    band.of(Measure.named("isp_vacuum_s").orElseThrow()).orElseThrow();
            double likely = p.balance().orElseThrow().engine().vacuumIsp();
            assertThat(impulse.high() - impulse.low()).isPositive();
            assertThat(likely).isBetween(impulse.low(), impulse.high() + 1e-3 * likely);
            SweepBand.Span swept =
                    band.of(Measure.named("chamber_pressure_Pa").orElseThrow()).orElseThrow();
            assertThat(swept.low())
                    .isEqualTo(swept.high())
                    .isEqualTo(p.balance().orElseThrow().engine().chamberPressure());
        });
    }

    /** Identity: the band at a point is that of the engine's own uncertainty with the same samples. */
    @Test
    void aBandIsThatOfTheEngineAlone() {
        Axis one = Axis.parse("engine.chamber_pressure=1MPa,1.1MPa");
        SweepBand band = sweep.run(CONCEPT, Map.of(), List.of(one), 8, Progress.NONE, () -> false)
                .points()
                .get(0)
                .band()
                .orElseThrow();
        EngineRuns runs = new EngineRuns(HomeFolder.find(), FluidLibrary.open());
        UncertaintyResult alone = new UncertaintyRuns(runs)
                .run(runs.read(CONCEPT, Map.of("engine.chamber_pressure", "1 MPa")), 8, Progress.NONE);
        assertThat(alone.distributions()).isNotEmpty().allSatisfy(d -> {
            SweepBand.Span span = band.of(d.measure()).orElseThrow();
            assertThat(span.low())
                    .isCloseTo(
                            d.percentile5(),
                            org.assertj.core.api.Assertions.within(1e-6 * Math.abs(d.percentile5()) + 1e-9));
            assertThat(span.high())
                    .isCloseTo(
                            d.percentile95(),
                            org.assertj.core.api.Assertions.within(1e-6 * Math.abs(d.percentile95()) + 1e-9));
        });
    }

    @Test
    void cancellingOnTheWayKeepsThePointWithoutItsBand() {
        AtomicInteger ended = new AtomicInteger();
        Sweep.Result result = sweep.run(
                CONCEPT, Map.of(), List.of(RATIO), 20, (done, of, what) -> ended.set(done), () -> ended.get() >= 6);
        assertThat(result.points()).isNotEmpty().allMatch(p -> p.balance().isPresent());
        assertThat(result.banded()).isFalse();
    }

    @Test
    void anAxisThatIsNoInputIsBadInput() {
        Axis wrong = Axis.parse("engine.chamber_presure=1..2MPa:2");
        assertThatThrownBy(() -> sweep.run(CONCEPT, Map.of(), List.of(wrong), Progress.NONE, () -> false))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("did you mean chamber_pressure?");
    }

    @Test
    void samplesCountAsCombinations() {
        List<Axis> axes = List.of(Axis.parse("a.a=1..2:1000"));
        assertThatThrownBy(() -> sweep.run(CONCEPT, Map.of(), axes, 50, Progress.NONE, () -> false))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("samples counted");
    }

    @Test
    void tooManyCombinationsAreRefusedBeforeAnyIsTried() {
        List<Axis> axes = List.of(Axis.parse("a.a=1..2:1000"), Axis.parse("a.b=1..2:1000"));
        assertThatThrownBy(() -> sweep.run(CONCEPT, Map.of(), axes, Progress.NONE, () -> false))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("more than 20000 combinations");
    }
}
