package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SolutionFoldTest {

    private static double[] falling(double... p) {
        return p;
    }

    /** Identity: x = 3 − 2 √(10 − p) turns back at 10. */
    @Test
    void aRootTurnsBackWhereItsRadicandVanishes() {
        double[] p = falling(9.99, 9.9, 9.6);
        double[] x = new double[3];
        for (int i = 0; i < 3; i++) {
            x[i] = 3 - 2 * Math.sqrt(10 - p[i]);
        }
        assertThat(SolutionFold.turn(p, x)).isCloseTo(10, within(1e-9));
    }

    /** Identity: the same with the second solution on the other branch. */
    @Test
    void bothBranchesTellTheTurn() {
        double[] p = falling(9.99, 9.9, 9.6);
        double[] x = {3 - 2 * Math.sqrt(0.01), 3 + 2 * Math.sqrt(0.1), 3 - 2 * Math.sqrt(0.4)};
        assertThat(SolutionFold.turn(p, x)).isCloseTo(10, within(1e-9));
    }

    /** Limit: a straight line never turns back, nor does one that flattens. */
    @Test
    void aLineDoesNot() {
        double[] p = falling(9.99, 9.9, 9.6);
        assertThat(SolutionFold.turn(p, new double[] {2 * 9.99, 2 * 9.9, 2 * 9.6}))
                .isGreaterThan(1e3);
        assertThat(SolutionFold.turn(p, new double[] {Math.sqrt(9.99), Math.sqrt(9.9), Math.sqrt(9.6)}))
                .isInfinite();
    }
}
