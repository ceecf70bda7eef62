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
        assertThat(SolutionFold.turn(p, x, 10.01)).isCloseTo(10, within(1e-6));
    }

    /** Identity: the same with the second solution on the other branch. */
    @Test
    void bothBranchesTellTheTurn() {
        double[] p = falling(9.99, 9.9, 9.6);
        double[] x = {3 - 2 * Math.sqrt(0.01), 3 + 2 * Math.sqrt(0.1), 3 - 2 * Math.sqrt(0.4)};
        assertThat(SolutionFold.turn(p, x, 10.01)).isCloseTo(10, within(1e-6));
    }

    /** Identity: solutions that hop between both branches, close to the turn, tell it as well. */
    @Test
    void hopsBesideTheTurnDoNotHideIt() {
        double[] p = falling(9.9999, 9.9998, 9.9990, 9.992, 9.95, 9.6);
        int[] side = {-1, 1, -1, 1, 1, -1};
        double[] x = new double[p.length];
        for (int i = 0; i < p.length; i++) {
            x[i] = 3 + side[i] * 2 * Math.sqrt(10 - p[i]) + 0.05 * (10 - p[i]);
        }
        assertThat(SolutionFold.turn(p, x, 10.0001)).isCloseTo(10, within(1e-3));
    }

    /** Limit: a straight line never turns back, nor does one that flattens. */
    @Test
    void aLineDoesNot() {
        double[] p = falling(9.99, 9.9, 9.6);
        assertThat(SolutionFold.turn(p, new double[] {2 * 9.99, 2 * 9.9, 2 * 9.6}, 10.01))
                .isGreaterThan(1e3);
        assertThat(SolutionFold.turn(p, new double[] {Math.sqrt(9.99), Math.sqrt(9.9), Math.sqrt(9.6)}, 10.01))
                .isInfinite();
    }
}
