package dev.penstock.fluids.table;

/**
 * Polynomials of degree {@value #ORDER} − 1 in two variables from −1 to 1: from values at Chebyshev's nodes to coefficients of
 * powers, and how much the highest terms still add.
 */
final class PatchBasis {

    static final int ORDER = 6;
    static final int SIZE = ORDER * ORDER;

    /** Weight of the terms before the highest ones (-). */
    private static final double BEFORE = 0.2;

    /** Largest value over their geometric mean that counts in a level (-). */
    private static final double LARGEST_PEAK = 3;

    /** Largest rise of a level from its middle, over the value there (-). */
    private static final double STEEPEST = 0.8;

    /** Chebyshev's nodes of the first kind, rising; none lies on the border. */
    static final double[] NODES = new double[ORDER];

    /** From values at the nodes to coefficients of Chebyshev's polynomials. */
    private static final double[][] TO_CHEBYSHEV = new double[ORDER][ORDER];

    /** From values at the nodes to coefficients of powers. */
    private static final double[][] TO_POWERS = new double[ORDER][ORDER];

    static {
        double[][] powers = new double[ORDER][ORDER]; // of each of Chebyshev's polynomials
        powers[0][0] = 1;
        powers[1][1] = 1;
        for (int n = 2; n < ORDER; n++) {
            for (int i = 0; i < ORDER; i++) {
                powers[n][i] = (i > 0 ? 2 * powers[n - 1][i - 1] : 0) - powers[n - 2][i];
            }
        }
        for (int k = 0; k < ORDER; k++) {
            double angle = Math.PI * (ORDER - k - 0.5) / ORDER;
            NODES[k] = Math.cos(angle);
            for (int n = 0; n < ORDER; n++) {
                TO_CHEBYSHEV[n][k] = (n == 0 ? 1.0 : 2.0) / ORDER * Math.cos(n * angle);
            }
        }
        for (int i = 0; i < ORDER; i++) {
            for (int k = 0; k < ORDER; k++) {
                for (int n = 0; n < ORDER; n++) {
                    TO_POWERS[i][k] += powers[n][i] * TO_CHEBYSHEV[n][k];
                }
            }
        }
    }

    private PatchBasis() {}

    /**
     * @param values values at the nodes, the second variable running faster
     * @return coefficient of x^i y^j at {@code i * ORDER + j}
     */
    static double[] powers(double[] values) {
        return both(TO_POWERS, values);
    }

    /**
     * The plane, with a twist, that comes nearest to values above zero of which a few may be far too large, or below zero: none counts as more
     * than {@value #LARGEST_PEAK} times their geometric mean or as less than its part, and nowhere does the plane fall to zero.
     *
     * @param values as of {@link #powers}, overwritten
     * @return coefficients as of {@link #powers}
     */
    static double[] level(double[] values) {
        double sum = 0;
        int above = 0;
        for (double value : values) {
            if (value > 0) {
                sum += Math.log(value);
                above++;
            }
        }
        double mean = Math.exp(sum / above);
        for (int k = 0; k < SIZE; k++) {
            values[k] = values[k] > 0 ? Math.max(mean / LARGEST_PEAK, Math.min(mean * LARGEST_PEAK, values[k])) : mean;
        }
        double[] c = both(TO_CHEBYSHEV, values);
        double slopes = Math.abs(c[1]) + Math.abs(c[ORDER]) + Math.abs(c[ORDER + 1]);
        double kept = Math.min(1, STEEPEST * c[0] / slopes);
        double[] powers = new double[SIZE];
        powers[0] = c[0];
        powers[1] = kept * c[1];
        powers[ORDER] = kept * c[ORDER];
        powers[ORDER + 1] = kept * c[ORDER + 1];
        return powers;
    }

    /**
     * How much the highest terms in the first and in the second variable add at most, which bounds the error of a series
     * that converges. The terms before them count in part: a kink in the middle shows in those alone.
     *
     * @param values values at the nodes
     * @param tail receives the two
     */
    static void tail(double[] values, double[] tail) {
        double[] c = both(TO_CHEBYSHEV, values);
        tail[0] = 0;
        tail[1] = 0;
        for (int k = 0; k < ORDER; k++) {
            tail[0] += Math.max(Math.abs(c[(ORDER - 1) * ORDER + k]), BEFORE * Math.abs(c[(ORDER - 2) * ORDER + k]));
            tail[1] += Math.max(Math.abs(c[k * ORDER + ORDER - 1]), BEFORE * Math.abs(c[k * ORDER + ORDER - 2]));
        }
    }

    /** @return value of a polynomial by its coefficients of powers */
    static double value(double[] coefficients, double x, double y) {
        double sum = 0;
        for (int i = ORDER - 1; i >= 0; i--) {
            double inner = 0;
            for (int j = ORDER - 1; j >= 0; j--) {
                inner = inner * y + coefficients[i * ORDER + j];
            }
            sum = sum * x + inner;
        }
        return sum;
    }

    private static double[] both(double[][] matrix, double[] values) {
        double[] half = new double[SIZE];
        double[] all = new double[SIZE];
        for (int i = 0; i < ORDER; i++) {
            for (int l = 0; l < ORDER; l++) {
                for (int k = 0; k < ORDER; k++) {
                    half[i * ORDER + l] += matrix[i][k] * values[k * ORDER + l];
                }
            }
        }
        for (int i = 0; i < ORDER; i++) {
            for (int j = 0; j < ORDER; j++) {
                for (int l = 0; l < ORDER; l++) {
                    all[i * ORDER + j] += matrix[j][l] * half[i * ORDER + l];
                }
            }
        }
        return all;
    }
}
