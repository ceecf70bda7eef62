package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EvenCurveTest {

    private static double cubic(double x) {
        return 2 - x + 3 * x * x - 0.7 * x * x * x;
    }

    private static EvenCurve sampled(int nodes, java.util.function.DoubleUnaryOperator f) {
        double[] values = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            values[i] = f.applyAsDouble(-1 + 3.0 * i / (nodes - 1));
        }
        return new EvenCurve(-1, 2, values);
    }

    /** Identity: a cubic is its own interpolant, between the nodes, at them and beyond the ends. */
    @Test
    void aCubicComesBack() {
        for (int nodes : new int[] {4, 5, 31}) {
            EvenCurve curve = sampled(nodes, EvenCurveTest::cubic);
            for (double x = -1.5; x < 2.6; x += 0.1) {
                assertThat(curve.at(x)).as(nodes + " nodes at " + x).isCloseTo(cubic(x), within(1e-11));
            }
        }
    }

    /** Of a smooth function half the step leaves a sixteenth of the error. */
    @Test
    void theErrorFallsWithTheFourthPower() {
        double coarse = Math.abs(sampled(31, Math::exp).at(0.55) - Math.exp(0.55));
        double fine = Math.abs(sampled(61, Math::exp).at(0.525) - Math.exp(0.525));
        assertThat(coarse / fine).isBetween(13.0, 20.0);
    }
}
