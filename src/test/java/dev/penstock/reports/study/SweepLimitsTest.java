package dev.penstock.reports.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.study.Axis;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.Progress;
import dev.penstock.study.Sweep;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A gas generator's turbine takes 1150 K (the bound of the engine's own limit list). */
class SweepLimitsTest {

    private static Sweep.Result sweep;
    private static Sweep.Result map;

    @BeforeAll
    static void run() {
        Sweep runs = new Sweep(new EngineRuns(HomeFolder.find(), FluidLibrary.open()));
        Path file = Path.of("cycles/heron.toml");
        Axis gas = Axis.parse("gas_generator.temperature=1050..1250K:3");
        Axis pressure = Axis.parse("engine.chamber_pressure=7 MPa,8 MPa");
        sweep = runs.run(file, Map.of(), List.of(gas), Progress.NONE, () -> false);
        map = runs.run(file, Map.of(), List.of(gas, pressure), Progress.NONE, () -> false);
    }

    private static double place(Sweep.Point point) {
        return Axis.numberOf(point.values().get(0)).orElseThrow();
    }

    /** Identity: the margin of a temperature is linear in it, so the boundary is the bound itself. */
    @Test
    void theBoundaryIsWhereTheMarginIsZero() {
        List<SweepLimits.Boundary> boundaries = new SweepLimits(sweep.points()).boundaries(SweepLimitsTest::place);
        assertThat(boundaries).hasSize(1);
        assertThat(boundaries.get(0).limit()).isEqualTo("main turbine.inlet_temperature");
        double bound = sweep.points().get(0).balance().orElseThrow().limits().stream()
                .filter(l -> l.name().equals("main turbine.inlet_temperature"))
                .findFirst()
                .orElseThrow()
                .limit();
        assertThat(boundaries.get(0).at()).isCloseTo(bound, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(boundaries.get(0).above()).isTrue();
    }

    @Test
    void theStretchBeyondItIsMissed() {
        SweepLimits limits = new SweepLimits(sweep.points());
        assertThat(limits.missed(SweepLimitsTest::place))
                .containsExactly(new SweepLimits.Stretch(
                        limits.boundaries(SweepLimitsTest::place).get(0).at(), 1250));
    }

    @Test
    void theChartNamesTheLimitAndWhereItBegins() {
        Drawing figure = new SweepCharts(sweep).figures().get(0);
        assertThat(figure.caption()).contains("A main turbine: inlet temperature, above 11");
        assertThat(figure.svg()).contains(">A</text>");
    }

    @Test
    void theMapDrawsTheLimitAcross() {
        Drawing figure = new SweepCharts(map).figures().get(0);
        assertThat(figure.svg()).contains(">A: main turbine: inlet temperature begins to be missed<");
        assertThat(figure.svg()).contains("A </text>");
    }
}
