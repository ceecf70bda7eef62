package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cycles.arrangements.Cycle;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class CycleReachRunsTest {

    private static final Path HOME = HomeFolder.find();
    private static final EngineRuns RUNS = new EngineRuns(HOME, FluidLibrary.open());
    private static final Concept CONCEPT = RUNS.read(
            Path.of("cycles/heron.toml"), Map.of("cooling.coolant", "none", "engine.chamber_pressure", "6 MPa"));
    private static CycleReach reach;

    /** Not in an initialiser: workers run a lambda of this class, which would wait for the class to be ready. */
    @BeforeAll
    static void search() {
        reach = new CycleReachRuns(RUNS, OptionalDouble.of(0.05))
                .run(CONCEPT, List.of(750.0, 950.0), Progress.NONE, () -> false);
    }

    private static CycleReach.Line line(String cycle) {
        return reach.lines().stream()
                .filter(l -> l.cycle().id().equals(cycle))
                .findFirst()
                .orElseThrow();
    }

    private static double pressure(CycleReach.Point point) {
        return point.balance().orElseThrow().engine().chamberPressure();
    }

    @Test
    void everyCycleWithTurbinesHasALineOrSaysWhyNot() {
        assertThat(reach.complete()).isTrue();
        assertThat(reach.lines())
                .hasSize((int)
                        Cycle.all().stream().filter(c -> c.traits().turbines()).count())
                .allSatisfy(l ->
                        assertThat(l.closed().isEmpty()).isEqualTo(!l.failure().isEmpty()));
        assertThat(line("expander").failure()).contains("no balance was found");
        assertThat(line("decomposition-generator").failure()).contains("neither of them decomposes by itself");
    }

    /** Identity: the cycles share propellants, mixture ratio, thrust and nozzle. */
    @Test
    void everyEngineHasTheSameThrustAndMixture() {
        List<EngineBalance> engines = reach.lines().stream()
                .flatMap(l -> l.closed().stream())
                .map(p -> p.balance().orElseThrow())
                .toList();
        assertThat(engines).isNotEmpty().allSatisfy(b -> {
            assertThat(b.engine().seaLevelThrust()).isCloseTo(620e3, within(1.0));
            assertThat(b.engine().mixtureRatio()).isCloseTo(2.35, within(1e-9));
            assertThat(b.engine().areaRatio()).isCloseTo(16, within(1e-9));
        });
    }

    @Test
    void hotterGasReachesFurther() {
        for (String cycle : List.of("gas-generator", "staged-fuel-rich", "full-flow", "tap-off")) {
            List<CycleReach.Point> points = line(cycle).closed();
            assertThat(points).as(cycle).hasSize(2);
            assertThat(pressure(points.get(1))).as(cycle).isGreaterThan(pressure(points.get(0)));
            assertThat(points.get(0).temperature().orElseThrow()).as(cycle).isCloseTo(750, within(5.0));
        }
    }

    /** The default limit of a turbine in oxygen-rich gas is 850 K [nasa-sp-125], so 950 K is not asked of it. */
    @Test
    void aLineEndsWhereTheTurbineDoes() {
        assertThat(line("staged-oxygen-rich").points())
                .extracting(p -> p.asked().orElseThrow())
                .containsExactly(750.0, 850.0);
    }

    @Test
    void dumpedGasCostsNoMoreThanIsAllowed() {
        CycleReach.Point cool = line("gas-generator").closed().get(0);
        EngineBalance engine = cool.balance().orElseThrow();
        double kept =
                engine.engineLosses().stream().mapToDouble(NamedLoss::factor).reduce(1, (a, b) -> a * b);
        assertThat(cool.limit()).isEqualTo("turbine exhaust.impulse_loss");
        assertThat(1 - kept).isCloseTo(0.05, within(1e-4)).isLessThanOrEqualTo(0.05);
    }

    @Test
    void cancellingKeepsWhatIsDone() {
        AtomicInteger asked = new AtomicInteger();
        CycleReach some = new CycleReachRuns(RUNS, OptionalDouble.of(0.05))
                .run(CONCEPT, List.of(900.0), Progress.NONE, () -> asked.incrementAndGet() > 1);
        assertThat(some.complete()).isFalse();
        assertThat(some.lines().stream().mapToLong(l -> l.closed().size()).sum())
                .isEqualTo(1);
    }
}
