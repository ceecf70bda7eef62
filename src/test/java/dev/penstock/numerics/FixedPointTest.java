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
}
