package dev.penstock.numerics.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnitDesignTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 16, 17, 1000})
    void aPermutationTakesEveryPlaceOnce(int size) {
        Permutation permutation = new Permutation(size, 42);
        BitSet places = new BitSet();
        for (int i = 0; i < size; i++) {
            places.set(permutation.at(i));
        }
        assertThat(places.cardinality()).isEqualTo(size);
        assertThat(places.length()).isEqualTo(size);
    }

    /** McKay, Beckman and Conover 1979: one point in each of n equal slices of every axis. */
    @Test
    void aLatinHypercubeHasAPointInEverySlice() {
        LatinHypercube design = new LatinHypercube(97, 5, 7);
        double[] point = new double[5];
        BitSet[] slices = {new BitSet(), new BitSet(), new BitSet(), new BitSet(), new BitSet()};
        for (int i = 0; i < 97; i++) {
            design.point(i, point);
            for (int d = 0; d < 5; d++) {
                slices[d].set((int) Math.floor(point[d] * 97));
            }
        }
        assertThat(slices).allSatisfy(s -> assertThat(s.cardinality()).isEqualTo(97));
    }

    /** Owen 1995: scrambling keeps a (0, m, 2)-net, which Sobol's first two coordinates are (Sobol 1967). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void scrambledPointsLieOneInEachBinaryBox(long seed) {
        int m = 8;
        int n = 1 << m;
        ScrambledSobol design = new ScrambledSobol(n, 2, seed);
        double[] point = new double[2];
        for (int k = 0; k <= m; k++) {
            BitSet boxes = new BitSet();
            for (int i = 0; i < n; i++) {
                design.point(i, point);
                int column = (int) (point[0] * (1 << k));
                int row = (int) (point[1] * (1 << m - k));
                boxes.set(column << m - k | row);
            }
            assertThat(boxes.cardinality())
                    .as("boxes of 2^-%d by 2^-%d", k, m - k)
                    .isEqualTo(n);
        }
    }

    @Test
    void aPointFollowsFromItsNumberAlone() {
        for (UnitDesign design : List.of(new ScrambledSobol(500, 7, 3), new LatinHypercube(500, 7, 3))) {
            double[] first = new double[7];
            double[] again = new double[7];
            design.point(311, first);
            design.point(2, again);
            design.point(3, again);
            design.point(311, again);
            assertThat(again).isEqualTo(first);
        }
    }

    @Test
    void anotherSeedGivesOtherPoints() {
        double[] one = new double[3];
        double[] other = new double[3];
        new ScrambledSobol(64, 3, 1).point(5, one);
        new ScrambledSobol(64, 3, 2).point(5, other);
        assertThat(other).isNotEqualTo(one);
    }

    /** The integral of x1 x2 x3 x4 over the cube is 1/16; 4096 independent points would be off by about 1.6e-3. */
    @Test
    void scrambledPointsIntegrateBetterThanRandomOnes() {
        ScrambledSobol design = new ScrambledSobol(4096, 4, 11);
        double[] x = new double[4];
        double sum = 0;
        for (int i = 0; i < design.size(); i++) {
            design.point(i, x);
            sum += x[0] * x[1] * x[2] * x[3];
        }
        assertThat(sum / design.size()).isCloseTo(1 / 16.0, within(1e-4));
    }

    @Test
    void aGridHasEveryCombinationAndItsEnds() {
        GridDesign grid = new GridDesign(List.of(new GridDesign.Axis(3, true), new GridDesign.Axis(2, false)));
        double[] point = new double[2];
        assertThat(grid.size()).isEqualTo(6);
        grid.point(0, point);
        assertThat(point).containsExactly(0, 0.25);
        grid.point(3, point);
        assertThat(point).containsExactly(0.5, 0.75);
        grid.point(5, point);
        assertThat(point).containsExactly(1, 0.75);
    }
}
