package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.NotConverged;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class OdeIntegratorTest {

    private static final OdeIntegrator.Equations OSCILLATOR = (t, y, d) -> {
        d[0] = y[1];
        d[1] = -y[0];
    };

    private static OdeIntegrator integrator() {
        return new OdeIntegrator("oscillator", new double[] {1e-12, 1e-12}, 1e-12, 1);
    }

    @Test
    void anOscillatorReturnsAfterItsPeriod() {
        double[] y = {1, 0};
        OdeIntegrator integrator = integrator();
        OdeIntegrator.Stop stop = integrator.integrate(OSCILLATOR, 0, y, 2 * Math.PI, List.of(), (t, s) -> {});
        assertThat(stop.event()).isEqualTo(-1);
        assertThat(y[0]).isCloseTo(1, within(1e-10)); // identity
        assertThat(y[1]).isCloseTo(0, within(1e-10));
        assertThat(integrator.evaluations()).isLessThan(1000);
    }

    @Test
    void stopsAtTheFirstEventAndSaysWhich() {
        double[] y = {1, 0};
        OdeIntegrator.Stop stop =
                integrator().integrate(OSCILLATOR, 0, y, 100, List.of((t, s) -> t - 50, (t, s) -> s[0]), (t, s) -> {});
        assertThat(stop.event()).isEqualTo(1);
        assertThat(stop.time()).isCloseTo(Math.PI / 2, within(1e-8)); // cos t = 0
        assertThat(y[1]).isCloseTo(-1, within(1e-8));
    }

    @Test
    void theObserverSeesStepsNoLongerThanAllowed() {
        List<Double> times = new ArrayList<>(List.of(0.0));
        integrator().integrate(OSCILLATOR, 0, new double[] {1, 0}, 10, List.of(), (t, s) -> times.add(t));
        for (int i = 1; i < times.size(); i++) {
            assertThat(times.get(i) - times.get(i - 1)).isBetween(0.0, 1.0 + 1e-12);
        }
        assertThat(times.get(times.size() - 1)).isEqualTo(10);
    }

    @Test
    void aDerivativeWithoutValueEndsTheIntegration() {
        assertThatThrownBy(() -> integrator()
                        .integrate(
                                (t, y, d) -> {
                                    d[0] = t > 1 ? Double.NaN : 1;
                                    d[1] = 0;
                                },
                                0,
                                new double[] {0, 0},
                                5,
                                List.of(),
                                (t, s) -> {}))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("oscillator")
                .hasMessageContaining("a derivative is NaN");
    }

    @Test
    void nothingHappensOverNoTime() {
        double[] y = {1, 2};
        OdeIntegrator.Stop stop = integrator().integrate(OSCILLATOR, 3, y, 3, List.of(), (t, s) -> {});
        assertThat(stop).isEqualTo(new OdeIntegrator.Stop(3, -1));
        assertThat(y).containsExactly(1, 2);
    }

    /** Where nothing moves a step could be endless; the longest that is allowed holds all the same. */
    @Test
    void stepsAreNoLongerThanAllowedWhereNothingMoves() {
        List<Double> times = new ArrayList<>(List.of(0.0));
        OdeIntegrator integrator = integrator();
        integrator.integrate((t, y, d) -> d[0] = 0, 0, new double[] {1, 0}, 10, List.of(), (t, s) -> times.add(t));
        for (int i = 1; i < times.size(); i++) {
            assertThat(times.get(i) - times.get(i - 1)).isBetween(0.0, 1.0 + 1e-12);
        }
        assertThat(integrator.evaluations()).isBetween(10, 400);
    }

    /** Identity: at every step the observer sees the state of that time, cos t and −sin t. */
    @Test
    void theObserverSeesTheStateOfItsTime() {
        integrator().integrate(OSCILLATOR, 0, new double[] {1, 0}, 10, List.of(), (t, s) -> {
            assertThat(s[0]).isCloseTo(Math.cos(t), within(1e-9));
            assertThat(s[1]).isCloseTo(-Math.sin(t), within(1e-9));
        });
    }

    /** Effort by count: a relative tolerance spares steps where the state is large. */
    @Test
    void aRelativeToleranceIsRelative() {
        OdeIntegrator integrator = new OdeIntegrator("large", new double[] {1e-12, 1e-12}, 1e-6, 100);
        double[] y = {1e9, 0};
        integrator.integrate(OSCILLATOR, 0, y, 2 * Math.PI, List.of(), (t, s) -> {});
        assertThat(y[0]).isCloseTo(1e9, within(1e5));
        assertThat(integrator.evaluations()).isBetween(30, 400);
    }

    @Test
    void anEndlessIntegrationIsGivenUp() {
        OdeIntegrator integrator = new OdeIntegrator("trembling", new double[] {1e-9}, 1e-9, 1e-4);
        assertThatThrownBy(() -> integrator.integrate(
                        (t, y, d) -> d[0] = Math.cos(1e6 * t), 0, new double[] {0}, 1e4, List.of(), (t, s) -> {}))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("trembling");
        assertThat(integrator.evaluations()).isBetween(100_000, 200_001);
    }
}
