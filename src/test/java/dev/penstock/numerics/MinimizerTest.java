package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.errors.NotConverged;
import java.util.ArrayList;
import java.util.List;
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

    /** Around zero a relative tolerance asks for nothing; the search ends at a thousandth of it times the bounds. */
    @Test
    void aValleyAtZeroIsFoundToTheSizeOfItsBounds() {
        Minimizer.Minimum minimum = Minimizer.between("notch", Math::abs, -1e6, 2e6, 1e-6, 500);
        assertThat(minimum.point().get(0)).isCloseTo(0, within(4e-3));
        assertThat(minimum.evaluations()).isLessThanOrEqualTo(34);
    }

    /** The first point asked for is the first guess, in its own units, and every point keeps the bounds. */
    @Test
    void theFirstGuessIsAskedFirst() {
        double[] low = {-3, 100};
        double[] high = {5, 900};
        List<double[]> asked = new ArrayList<>();
        Minimizer.Minimum minimum = Minimizer.within(
                "bowl",
                x -> {
                    asked.add(x.clone());
                    return Math.pow(x[0] - 2, 2) + Math.pow((x[1] - 400) / 100, 2);
                },
                new double[] {-1, 300},
                low,
                high,
                0.1,
                1e-7,
                500);
        assertThat(asked.get(0)[0]).isCloseTo(-1, within(1e-12));
        assertThat(asked.get(0)[1]).isCloseTo(300, within(1e-9));
        assertThat(asked).allMatch(x -> x[0] >= -3 && x[0] <= 5 && x[1] >= 100 && x[1] <= 900);
        assertThat(minimum.evaluations()).isEqualTo(asked.size());
        assertThat(minimum.point().get(0)).isCloseTo(2, within(1e-4));
        assertThat(minimum.point().get(1)).isCloseTo(400, within(1e-2));
    }

    /** A first guess beyond its bounds begins at them. */
    @Test
    void aFirstGuessBeyondItsBoundsBeginsThere() {
        List<double[]> asked = new ArrayList<>();
        Minimizer.within(
                "slope",
                x -> {
                    asked.add(x.clone());
                    return x[0] - x[1];
                },
                new double[] {-7, 9},
                new double[] {0, 0},
                new double[] {1, 1},
                0.1,
                1e-3,
                100);
        assertThat(asked.get(0)).containsExactly(0, 1);
    }
}
