package dev.penstock.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class EnvelopeCholeskyTest {

    /** Identity: the matrix times the solution is the right side, for rows of any length. */
    @Test
    void theMatrixTimesTheSolutionIsTheRightSide() {
        Random dice = new Random(3);
        int n = 60;
        int[] first = new int[n];
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            first[i] = Math.max(0, i - dice.nextInt(12));
            for (int j = first[i]; j < i; j++) {
                matrix[i][j] = dice.nextDouble() - 0.5;
                matrix[j][i] = matrix[i][j];
            }
        }
        EnvelopeCholesky system = new EnvelopeCholesky(first);
        for (int i = 0; i < n; i++) {
            matrix[i][i] = 1;
            for (int j = 0; j < n; j++) {
                matrix[i][i] += j == i ? 0 : Math.abs(matrix[i][j]);
            }
            for (int j = first[i]; j <= i; j++) {
                system.add(i, j, matrix[i][j]);
            }
        }
        double[] right = dice.doubles(n).toArray();
        double[] x = right.clone();
        assertThat(system.solve(x)).isTrue();
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += matrix[i][j] * x[j];
            }
            assertThat(sum).isCloseTo(right[i], within(1e-13));
        }
    }

    @Test
    void aMatrixThatIsNotPositiveDefiniteIsTold() {
        EnvelopeCholesky system = new EnvelopeCholesky(new int[] {0, 0});
        system.add(0, 0, 1);
        system.add(1, 0, 2);
        system.add(1, 1, 3);
        double[] right = {1, 1};
        assertThat(system.solve(right)).isFalse();
        assertThat(right[0]).isNaN();
    }
}
