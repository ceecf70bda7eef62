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

    /** Twice the probability of each coordinate of points that lie evenly over a normal distribution, less one. */
    private static final List<double[]> PLACES = TemperedSampler.prior(4, ResponseSurface.wanted(4)).stream()
            .map(ResponseSurfaceTest::t)
            .toList();

    private static double[] t(double[] point) {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        return Arrays.stream(point)
                .map(x -> 2 * normal.cumulativeProbability(x) - 1)
                .toArray();
    }

    private static double[] values(ToDoubleFunction<double[]> of) {
        return PLACES.stream().mapToDouble(of).toArray();
    }

    @Test
    void whatHasItsShapeIsMetExactly() {
        ToDoubleFunction<double[]> shaped =
                t -> Math.exp(5 + 0.3 * t[0] - 0.2 * t[1] * t[2] + 0.1 * t[3] * t[3] + 0.05 * Math.pow(t[2], 3));
        ResponseSurface surface = ResponseSurface.of(PLACES, values(shaped)).orElseThrow();
        double[] elsewhere = t(new double[] {0.4, -1.3, 0.9, 0.1});
        double expected = shaped.applyAsDouble(elsewhere);
        assertThat(surface.value(elsewhere)).isCloseTo(expected, within(1e-9 * expected));
        assertThat(surface.error(expected)).isLessThan(1e-9 * expected);
    }

    @Test
    void whatItCannotFollowIsInItsError() {
        ToDoubleFunction<double[]> wavy = t -> 10 + Math.sin(6 * t[0]);
        ResponseSurface surface = ResponseSurface.of(PLACES, values(wavy)).orElseThrow();
        assertThat(surface.error(10)).isBetween(0.1, 2.0);
        ToDoubleFunction<double[]> ofBothSigns = t -> t[0] - 0.2;
        assertThat(ResponseSurface.of(PLACES, values(ofBothSigns)).orElseThrow().value(new double[4]))
                .isCloseTo(-0.2, within(1e-9));
    }

    @Test
    void fewValuesMakeAPlainerSurface() {
        double[] few = values(t -> Math.exp(2 + 0.4 * t[0] - 0.1 * t[3]));
        Arrays.fill(few, 0, few.length - 10, Double.NaN);
        assertThat(ResponseSurface.of(PLACES, few).orElseThrow().value(new double[4]))
                .isCloseTo(Math.exp(2), within(1e-9));
        double[] more = values(t -> Math.exp(2 + 0.4 * t[0] - 0.1 * t[3] * t[3]));
        Arrays.fill(more, 0, more.length - 18, Double.NaN);
        assertThat(ResponseSurface.of(PLACES, more).orElseThrow().value(new double[4]))
                .isCloseTo(Math.exp(2), within(1e-9));
    }

    @Test
    void tooFewValuesMakeNoSurface() {
        double[] mostlyMissing = values(t -> 1 + t[0] * t[0]);
        Arrays.fill(mostlyMissing, 0, mostlyMissing.length - 8, Double.NaN);
        assertThat(ResponseSurface.of(PLACES, mostlyMissing)).isEmpty();
    }
}
