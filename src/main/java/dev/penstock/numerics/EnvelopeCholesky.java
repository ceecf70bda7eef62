package dev.penstock.numerics;

import java.util.Arrays;

/**
 * Linear system with a symmetric, positive definite matrix that has all of its numbers near the diagonal: A = L Lᵀ row by row,
 * where a row of L begins in the column in which that of A begins. Takes Σ b²/2 multiplications for rows of length b, and no
 * iteration. Standard method (Jennings' envelope form of Cholesky's, from memory). Not thread-safe.
 */
public final class EnvelopeCholesky {

    private final int[] first;
    private final double[][] rows;

    /** @param first for each row the column of its first number, at most the row itself */
    public EnvelopeCholesky(int[] first) {
        this.first = first.clone();
        this.rows = new double[first.length][];
        for (int i = 0; i < first.length; i++) {
            rows[i] = new double[i - first[i] + 1];
        }
    }

    /**
     * Adds to a number of the matrix and to its mirror image.
     *
     * @param row row
     * @param column column, from the first of the row to the row
     * @param value what is added
     */
    public void add(int row, int column, double value) {
        rows[row][column - first[row]] += value;
    }

    /**
     * Solves the system; the matrix is used up.
     *
     * @param right right side; afterwards the solution
     * @return whether the matrix was positive definite; if not, the right side is of no use any more
     */
    public boolean solve(double[] right) {
        for (int i = 0; i < rows.length; i++) {
            double[] row = rows[i];
            int start = first[i];
            for (int j = start; j < i; j++) {
                double[] other = rows[j];
                int from = Math.max(start, first[j]);
                double value = row[j - start] - dot(row, from - start, other, from - first[j], j - from);
                row[j - start] = value / other[other.length - 1];
            }
            double pivot = row[i - start] - dot(row, 0, row, 0, i - start);
            if (!(pivot > 0)) {
                Arrays.fill(right, Double.NaN);
                return false;
            }
            row[i - start] = Math.sqrt(pivot);
            right[i] = (right[i] - dot(row, 0, right, start, i - start)) / row[i - start];
        }
        for (int i = rows.length - 1; i >= 0; i--) {
            double[] row = rows[i];
            int start = first[i];
            double x = right[i] / row[i - start];
            right[i] = x;
            for (int j = start; j < i; j++) {
                right[j] -= row[j - start] * x;
            }
        }
        return true;
    }

    /** Sum of products in four parts, which a processor can work at side by side. */
    private static double dot(double[] a, int fromA, double[] b, int fromB, int count) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int k = 0;
        for (; k + 3 < count; k += 4) {
            s0 += a[fromA + k] * b[fromB + k];
            s1 += a[fromA + k + 1] * b[fromB + k + 1];
            s2 += a[fromA + k + 2] * b[fromB + k + 2];
            s3 += a[fromA + k + 3] * b[fromB + k + 3];
        }
        for (; k < count; k++) {
            s0 += a[fromA + k] * b[fromB + k];
        }
        return s0 + s1 + (s2 + s3);
    }
}
