package dev.penstock.combustion.species;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** Linear equations: against the independent solver of Commons Math, and by putting the solution in. */
class DenseSystemTest {

    @Test
    void randomSystemsAgreeWithAnIndependentSolver() {
        Random random = new Random(4);
        DenseSystem system = new DenseSystem(12);
        for (int round = 0; round < 200; round++) {
            int n = 1 + random.nextInt(12);
            double[][] matrix = new double[14][14];
            double[] right = new double[n];
            for (int i = 0; i < n; i++) {
                right[i] = random.nextGaussian();
                for (int j = 0; j < n; j++) {
                    matrix[i][j] = random.nextInt(4) == 0 ? 0 : random.nextGaussian();
                }
                matrix[i][i] += 3 * (random.nextBoolean() ? 1 : -1);
                matrix[i][n] = 1e9; // beyond the unknowns: must not matter
            }
            double[] x = right.clone();
            assertThat(system.factor(matrix, n)).isTrue();
            system.solve(x);
            double[] expected = new LUDecomposition(new Array2DRowRealMatrix(matrix).getSubMatrix(0, n - 1, 0, n - 1))
                    .getSolver()
                    .solve(new ArrayRealVector(right))
                    .toArray();
            for (int i = 0; i < n; i++) {
                assertThat(x[i]).isCloseTo(expected[i], within(1e-9 * (1 + Math.abs(expected[i]))));
                double sum = 0;
                for (int j = 0; j < n; j++) {
                    sum += matrix[i][j] * x[j];
                }
                assertThat(sum).isCloseTo(right[i], within(1e-9));
            }
        }
    }

    /** Worked by hand: rows must be exchanged, and one factor serves several right-hand sides. */
    @Test
    void aZeroOnTheDiagonalIsExchanged() {
        DenseSystem system = new DenseSystem(3);
        double[][] matrix = {{0, 2, 1}, {1, 0, 0}, {0, 0, 4}};
        assertThat(system.factor(matrix, 3)).isTrue();
        for (double scale : new double[] {1, -3}) {
            double[] x = {5 * scale, 7 * scale, 4 * scale};
            system.solve(x);
            assertThat(x).containsExactly(7 * scale, 2 * scale, scale);
        }
        assertThat(matrix[0]).containsExactly(0, 2, 1);
    }

    @Test
    void whatHasNoSolutionIsSaidSo() {
        DenseSystem system = new DenseSystem(2);
        assertThat(system.factor(new double[][] {{1, 2}, {2, 4}}, 2)).isFalse();
        assertThat(system.factor(new double[][] {{0, 0}, {0, 1}}, 2)).isFalse();
        assertThat(system.factor(new double[][] {{Double.NaN, 0}, {0, 1}}, 2)).isFalse();
        assertThat(system.factor(new double[][] {{Double.POSITIVE_INFINITY, 0}, {0, 1}}, 2))
                .isFalse();
        assertThat(system.factor(new double[][] {{1, 2}, {2, 3}}, 2)).isTrue();
    }
}
