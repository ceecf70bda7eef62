package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.NotConverged;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FixedStepIntegratorTest {

    private static final OdeIntegrator.Equations OSCILLATOR = (t, y, d) -> {
        d[0] = y[1];
        d[1] = -y[0];
    };

    private static FixedStepIntegrator integrator(double step) {
        return new FixedStepIntegrator("oscillator", (t, y) -> step);
    }

    private static double missAfterAPeriod(double step) {
        double[] y = {1, 0};
        integrator(step).integrate(OSCILLATOR, 0, y, 2 * Math.PI, List.of(), (t, s) -> {});
        return Math.hypot(y[0] - 1, y[1]);
    }

    @Test
    void theErrorFallsWithTheFourthPowerOfTheStep() {
        double period = 2 * Math.PI;
        assertThat(missAfterAPeriod(period / 100)).isLessThan(1e-6); // identity: back after a period
        assertThat(missAfterAPeriod(period / 50) / missAfterAPeriod(period / 100))
                .isCloseTo(16, within(0.5)); // order of the method
    }

    @Test
    void stopsAtTheFirstEventAndSaysWhich() {
        double[] y = {1, 0};
        OdeIntegrator.Stop stop = integrator(0.3)
                .integrate(
                        OSCILLATOR,
                        0,
                        y,
                        100,
                        List.of((t, s) -> t - 1.6, (t, s) -> s[0], (t, s) -> t - 1.58),
                        (t, s) -> {});
        assertThat(stop.event()).isEqualTo(1);
        assertThat(stop.time()).isCloseTo(Math.PI / 2, within(3e-4)); // cos t = 0
        assertThat(y[0]).isCloseTo(0, within(1e-9));
        assertThat(y[1]).isCloseTo(-1, within(3e-4));
    }

    /** From a start that moves evenly the time of an event moves evenly: second differences are as small as rounding. */
    @Test
    void theTimeOfAnEventIsASmoothFunctionOfTheStart() {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double[] y = {Math.cos(1e-2 * i), -Math.sin(1e-2 * i)};
            times.add(integrator(0.1)
                    .integrate(OSCILLATOR, 0, y, 100, List.of((t, s) -> s[0]), (t, s) -> {})
                    .time());
        }
        for (int i = 1; i < times.size() - 1; i++) {
            assertThat(times.get(i + 1) - 2 * times.get(i) + times.get(i - 1)).isCloseTo(0, within(1e-7));
        }
    }

    @Test
    void anEventOnTheStartItselfDoesNotStopIt() {
        double[] y = {0, 1};
        OdeIntegrator.Stop stop =
                integrator(0.1).integrate(OSCILLATOR, 0, y, 10, List.of((t, s) -> s[0]), (t, s) -> {});
        assertThat(stop.time()).isCloseTo(Math.PI, within(1e-5)); // sin t = 0 once more
    }

    @Test
    void endsWhereAskedAndCountsItsEffort() {
        List<Double> times = new ArrayList<>();
        FixedStepIntegrator integrator = integrator(0.3);
        OdeIntegrator.Stop stop =
                integrator.integrate(OSCILLATOR, 0, new double[] {1, 0}, 1, List.of(), (t, s) -> times.add(t));
        assertThat(stop.time()).isEqualTo(1);
        assertThat(stop.event()).isEqualTo(-1);
        assertThat(times).hasSize(4).last().isEqualTo(1.0);
        assertThat(integrator.evaluations()).isEqualTo(1 + 4 * 4);
        assertThat(integrator
                        .integrate(OSCILLATOR, 1, new double[] {1, 0}, 1, List.of(), (t, s) -> {})
                        .time())
                .isEqualTo(1);
    }

    @Test
    void aStateWithoutValueEndsTheIntegration() {
        assertThatThrownBy(() -> integrator(0.1)
                        .integrate(
                                (t, y, d) -> {
                                    d[0] = t > 1 ? Double.NaN : 1;
                                    d[1] = 0;
                                },
                                0,
                                new double[2],
                                2,
                                List.of(),
                                (t, s) -> {}))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("not finite");
    }
}
