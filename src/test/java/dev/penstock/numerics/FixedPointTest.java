package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FixedPointTest {

    /** Limit: for a linear map in two unknowns two remembered points are enough, whatever its contraction. */
    @Test
    void aLinearMapIsSolvedInFewSteps() {
        FixedPoint mixer = new FixedPoint(3, 1, 1);
        double[] x = {0, 0};
        for (int i = 0; i < 5; i++) {
            double[] image = {0.9 * x[0] - 0.3 * x[1] + 1, 0.4 * x[0] + 0.7 * x[1] - 2};
            x = mixer.next(x, image);
        }
        // (I - A) x = b by hand: 0.1 x + 0.3 y = 1, -0.4 x + 0.3 y = -2
        assertThat(x[0]).isCloseTo(6, within(1e-9));
        assertThat(x[1]).isCloseTo(4.0 / 3, within(1e-9));
    }

    @Test
    void theFirstStepIsPlainSubstitution() {
        assertThat(new FixedPoint(2, 1).next(new double[] {1}, new double[] {0.25}))
                .containsExactly(0.25);
    }

    /** Identity: with one unknown, mixing two points is the secant step to g(x) = x. */
    @Test
    void theSecondStepOfOneUnknownIsTheSecant() {
        FixedPoint mixer = new FixedPoint(3, 2);
        mixer.next(new double[] {1}, new double[] {1.6});
        // remainders 0.6 at 1 and 0.2 at 1.5: zero at 1.75
        assertThat(mixer.next(new double[] {1.5}, new double[] {1.7})[0]).isCloseTo(1.75, within(1e-12));
    }

    /**
     * Worked by hand: remainders (1, 1) and then (0.5, 2) differ by (−0.5, 1), scaled by 1 and s by (−0.5, 1/s). With s 1 the weight is
     * (−0.25 + 2)/1.25 = 1.4, with s 2 it is (−0.25 + 0.5)/0.5 = 0.5; images (1, 1) and (1.5, 3) differ by (0.5, 2).
     */
    @Test
    void remaindersAreWeighedInTheirScale() {
        for (double[] row : new double[][] {{1, 1.4}, {2, 0.5}}) {
            FixedPoint mixer = new FixedPoint(2, 1, row[0]);
            mixer.next(new double[] {0, 0}, new double[] {1, 1});
            double[] next = mixer.next(new double[] {1, 1}, new double[] {1.5, 3});
            assertThat(next[0]).isCloseTo(1.5 - row[1] * 0.5, within(1e-12));
            assertThat(next[1]).isCloseTo(3 - row[1] * 2, within(1e-12));
        }
    }

    /** Only as many points as asked for are remembered: the rest is as if it had not been. */
    @Test
    void pointsBeyondTheDepthAreForgotten() {
        double[][] x = {{0, 0}, {1, 0.3}, {0.4, 0.9}};
        double[][] image = {{0.7, 0.1}, {0.2, 0.8}, {0.6, 0.5}};
        FixedPoint old = new FixedPoint(1, 1, 1);
        old.next(x[0], image[0]);
        old.next(x[1], image[1]);
        FixedPoint young = new FixedPoint(1, 1, 1);
        young.next(x[1], image[1]);
        assertThat(old.next(x[2], image[2])).containsExactly(young.next(x[2], image[2]));
        FixedPoint reset = new FixedPoint(2, 1, 1);
        reset.next(x[0], image[0]);
        reset.reset();
        assertThat(reset.next(x[1], image[1])).containsExactly(image[1]);
        FixedPoint deep = new FixedPoint(2, 1, 1);
        deep.next(x[0], image[0]);
        deep.next(x[1], image[1]);
        FixedPoint shallow = new FixedPoint(1, 1, 1);
        shallow.next(x[1], image[1]);
        assertThat(deep.next(x[2], image[2])).isNotEqualTo(shallow.next(x[2], image[2]));
    }

    @Test
    void twoEqualRemaindersSayNothing() {
        FixedPoint mixer = new FixedPoint(2, 1);
        mixer.next(new double[] {1}, new double[] {1.5});
        assertThat(mixer.next(new double[] {2}, new double[] {2.5})).containsExactly(2.5);
    }
}
