package dev.penstock.numerics.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Surfaces of quantities that are known in closed form: identities, no outside source needed. */
class ResponseSurfaceTest {

    private static final List<double[]> POINTS = TemperedSampler.prior(4, ResponseSurface.wanted(4));

    private static double[] t(double[] point) {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        return Arrays.stream(point)
                .map(x -> 2 * normal.cumulativeProbability(x) - 1)
                .toArray();
    }

    private static double[] values(ToDoubleFunction<double[]> of) {
        return POINTS.stream().mapToDouble(of).toArray();
    }

    @Test
    void whatHasItsShapeIsMetExactly() {
        ToDoubleFunction<double[]> shaped = x -> {
            double[] t = t(x);
            return Math.exp(5 + 0.3 * t[0] - 0.2 * t[1] * t[2] + 0.1 * t[3] * t[3] + 0.05 * Math.pow(t[2], 3));
        };
        ResponseSurface surface = ResponseSurface.of(POINTS, values(shaped)).orElseThrow();
        double[] elsewhere = {0.4, -1.3, 0.9, 0.1};
        double expected = shaped.applyAsDouble(elsewhere);
        assertThat(surface.value(ResponseSurface.place(elsewhere))).isCloseTo(expected, within(1e-9 * expected));
        assertThat(surface.error(expected)).isLessThan(1e-9 * expected);
    }

    @Test
    void whatItCannotFollowIsInItsError() {
        ToDoubleFunction<double[]> wavy = x -> 10 + Math.sin(6 * t(x)[0]);
        ResponseSurface surface = ResponseSurface.of(POINTS, values(wavy)).orElseThrow();
        assertThat(surface.error(10)).isBetween(0.1, 2.0);
        ToDoubleFunction<double[]> ofBothSigns = x -> t(x)[0] - 0.2;
        assertThat(ResponseSurface.of(POINTS, values(ofBothSigns)).orElseThrow().value(new double[4]))
                .isCloseTo(-0.2, within(1e-9));
    }

    @Test
    void fewValuesMakeAPlainerSurface() {
        double[] few = values(x -> Math.exp(2 + 0.4 * t(x)[0] - 0.1 * t(x)[3]));
        Arrays.fill(few, 0, few.length - 10, Double.NaN);
        assertThat(ResponseSurface.of(POINTS, few).orElseThrow().value(new double[4]))
                .isCloseTo(Math.exp(2), within(1e-9));
        double[] more = values(x -> Math.exp(2 + 0.4 * t(x)[0] - 0.1 * t(x)[3] * t(x)[3]));
        Arrays.fill(more, 0, more.length - 18, Double.NaN);
        assertThat(ResponseSurface.of(POINTS, more).orElseThrow().value(new double[4]))
                .isCloseTo(Math.exp(2), within(1e-9));
    }

    @Test
    void tooFewValuesMakeNoSurface() {
        double[] mostlyMissing = values(x -> 1 + x[0] * x[0]);
        Arrays.fill(mostlyMissing, 0, mostlyMissing.length - 8, Double.NaN);
        assertThat(ResponseSurface.of(POINTS, mostlyMissing)).isEmpty();
    }
}
