package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LowDiscrepancyTest {

    /** Identity of Sobol's sequence: with the origin, the first 2^k points put one into each of 2^k equal slices, in every axis. */
    @Test
    void everyAxisIsFilledEvenly() {
        List<List<Double>> points = LowDiscrepancy.points(5, 63);
        assertThat(points).hasSize(63).doesNotHaveDuplicates();
        assertThat(points.get(0)).containsExactly(0.5, 0.5, 0.5, 0.5, 0.5);
        for (int axis = 0; axis < 5; axis++) {
            int k = axis;
            assertThat(points.stream().map(p -> (int) (64 * p.get(k))))
                    .doesNotHaveDuplicates()
                    .doesNotContain(0);
            assertThat(points).allMatch(p -> p.get(k) > 0 && p.get(k) < 1);
        }
    }

    @Test
    void thePointsAreTheSameAtEveryRun() {
        assertThat(LowDiscrepancy.points(3, 20))
                .isEqualTo(LowDiscrepancy.points(3, 30).subList(0, 20));
    }

    /** Identity: every point moves by the same vector, and comes back in where it leaves the cube. */
    @Test
    void shiftedPointsAreTheSameMovedTogether() {
        SplittableRandom same = new SplittableRandom(7);
        double[] shift = {same.nextDouble(), same.nextDouble(), same.nextDouble()};
        List<double[]> shifted = LowDiscrepancy.shifted(3, 20, new SplittableRandom(7));
        List<List<Double>> points = LowDiscrepancy.points(3, 20);
        for (int k = 0; k < 20; k++) {
            for (int i = 0; i < 3; i++) {
                double moved = points.get(k).get(i) + shift[i];
                assertThat(shifted.get(k)[i]).isEqualTo(moved - Math.floor(moved));
            }
        }
    }
}
