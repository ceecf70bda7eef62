package dev.penstock.combustion.species;

/**
 * Small dense linear systems solved by elimination with partial pivoting; the factors stay for further right-hand sides.
 * Nothing is allocated after construction. Not thread-safe.
 */
public final class DenseSystem {

    private final double[][] a;
    private final int[] pivot;
    private int size;

    /** @param capacity largest number of unknowns */
    public DenseSystem(int capacity) {
        a = new double[capacity][capacity];
        pivot = new int[capacity];
    }

    /**
     * Copies and factors a matrix.
     *
     * @param matrix coefficients; left as it is
     * @param unknowns number of leading rows and columns to use
     * @return false if the matrix is singular to working precision or not finite
     */
    public boolean factor(double[][] matrix, int unknowns) {
        size = unknowns;
        for (int i = 0; i < size; i++) {
            System.arraycopy(matrix[i], 0, a[i], 0, size);
        }
        for (int k = 0; k < size; k++) {
            int best = k;
            double largest = Math.abs(a[k][k]);
            for (int i = k + 1; i < size; i++) {
                double value = Math.abs(a[i][k]);
                if (value > largest) {
                    largest = value;
                    best = i;
                }
            }
            if (!(largest > 0 && largest < Double.POSITIVE_INFINITY)) {
                return false;
            }
            pivot[k] = best;
            double[] row = a[best];
            a[best] = a[k];
            a[k] = row;
            double inverse = 1 / row[k];
            for (int i = k + 1; i < size; i++) {
                double[] target = a[i];
                double factor = target[k] * inverse;
                target[k] = factor;
                if (factor != 0) {
                    for (int j = k + 1; j < size; j++) {
                        target[j] -= factor * row[j];
                    }
                }
            }
        }
        return true;
    }

    /** @param x right-hand side on entry, solution on return */
    public void solve(double[] x) {
        for (int k = 0; k < size; k++) {
            double value = x[pivot[k]];
            x[pivot[k]] = x[k];
            x[k] = value;
        }
        for (int i = 1; i < size; i++) {
            double sum = x[i];
            double[] row = a[i];
            for (int j = 0; j < i; j++) {
                sum -= row[j] * x[j];
            }
            x[i] = sum;
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = x[i];
            double[] row = a[i];
            for (int j = i + 1; j < size; j++) {
                sum -= row[j] * x[j];
            }
            x[i] = sum / row[i];
        }
    }
}
