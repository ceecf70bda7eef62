package dev.penstock.numerics.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShareSurfaceTest {

    /** A share that is the same everywhere is found, but for the belief that is held against it; a twentieth is the least. */
    @Test
    void aConstantShareAndAnEdge() {
        List<double[]> points = TemperedSampler.prior(2, 400);
        double[] third = new double[400];
        double[] edge = new double[400];
        for (int i = 0; i < 400; i++) {
            third[i] = 1.0 / 3;
            edge[i] = points.get(i)[0] > 0.5 ? 0 : 1;
        }
        // 0.05 + 0.95/3, and what the belief of the constant pulls: about a thousandth.
        assertThat(ShareSurface.of(points, third).value(new double[] {0.3, -1}))
                .isCloseTo(0.05 + 0.95 / 3, within(2e-3));
        ShareSurface found = ShareSurface.of(points, edge);
        assertThat(found.value(new double[] {-1, 0})).isGreaterThan(0.95);
        assertThat(found.value(new double[] {2, 0})).isBetween(0.05, 0.1);
    }

    /** Where nothing closes or everything does the belief keeps the answer finite. */
    @Test
    void nothingAndEverything() {
        List<double[]> points = new ArrayList<>(TemperedSampler.prior(3, 20));
        double[] all = new double[20];
        assertThat(ShareSurface.of(points, all).value(points.get(0))).isBetween(0.05, 0.2);
        Arrays.fill(all, 1);
        assertThat(ShareSurface.of(points, all).value(points.get(0))).isBetween(0.8, 1.0);
    }
}
