package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.NotConverged;
import org.junit.jupiter.api.Test;

class MinimizerTest {

    @Test
    void findsTheValleyOfOneVariable() {
        Minimizer.Minimum minimum = Minimizer.between("test", x -> x * x * x * x - 4 * x, 0, 5, 1e-8, 100);
        assertThat(minimum.point().get(0)).isCloseTo(1, within(1e-6)); // identity: 4x³ = 4
        assertThat(minimum.value()).isCloseTo(-3, within(1e-10));
        assertThat(minimum.evaluations()).isLessThan(60);
    }

    @Test
    void findsTheBottomOfRosenbrocksValley() {
        // Rosenbrock's function, smallest at (1, 1)
        Minimizer.Minimum minimum = Minimizer.within(
                "test",
                x -> 100 * Math.pow(x[1] - x[0] * x[0], 2) + Math.pow(1 - x[0], 2),
                new double[] {-1.2, 1},
                new double[] {-2, -2},
                new double[] {2, 2},
                0.1,
                1e-8,
                2000);
        assertThat(minimum.point().get(0)).isCloseTo(1, within(1e-4));
        assertThat(minimum.point().get(1)).isCloseTo(1, within(1e-4));
    }

    @Test
    void aSpentBudgetReturnsTheBestPointSoFar() {
        Minimizer.Minimum minimum = Minimizer.within(
                "test",
                x -> Math.pow(x[0] - 3, 2) + Math.pow(x[1] - 2, 2),
                new double[] {0, 0},
                new double[] {-10, -10},
                new double[] {10, 10},
                0.1,
                1e-10,
                12);
        assertThat(minimum.value()).isLessThanOrEqualTo(13); // the start
        assertThat(minimum.evaluations()).isLessThanOrEqualTo(13);
    }

    @Test
    void aFunctionWithoutValueEndsTheSearchWithItsArgument() {
        assertThatThrownBy(() -> Minimizer.between("hole", x -> x > 2 ? Double.NaN : -x, 0, 5, 1e-6, 100))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("hole")
                .hasMessageContaining("NaN at");
    }

    @Test
    void tooFewEvaluationsAreSaidSo() {
        assertThatThrownBy(() -> Minimizer.between("hasty", x -> Math.cosh(x - 1), -5, 5, 1e-8, 4))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("evaluations used up");
    }
}
