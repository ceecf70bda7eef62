package dev.penstock.cooling.wall;

import dev.penstock.numerics.EnvelopeCholesky;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Rows of a {@link ChannelCell} that are all alike, brought down to the first and the last of them without any approximation: along a row
 * the volumes are coupled by A, from row to row by M, and in the modes of A v = λ M v the rows between obey
 * <pre>
 * y_j+1 + y_j-1 = (2 + λ) y_j = 2 cosh ψ y_j,   y_j = (y_0 sinh (N-j)ψ + y_N sinh jψ)/sinh Nψ
 * </pre>
 * so that the ends feel λ + 1 − sinh (N-1)ψ/sinh Nψ of their own and −sinh ψ/sinh Nψ of each other. Temperatures are those above the
 * coolant (K). Separation of variables on the finite volumes; own derivation.
 */
final class CellStrip {

    private final int columns;
    private final int rows;
    private final double side;
    /** Roots of the couplings from row to row (W/(m·K)). */
    private final double[] root;

    private final double[][] modes;
    private final double[] eigenvalues;

    /**
     * @param dx widths of the volumes (m)
     * @param dy height of a row (m)
     * @param rows rows, two or more
     * @param conductivity conductivity of the metal (W/(m·K))
     * @param side conductance from the first volume of each row to the coolant beside it (W/(m·K)); zero for none
     */
    CellStrip(double[] dx, double dy, int rows, double conductivity, double side) {
        this.columns = dx.length;
        this.rows = rows;
        this.side = side;
        root = new double[columns];
        double[] main = new double[columns];
        double[] beside = new double[columns - 1];
        for (int i = 0; i < columns; i++) {
            root[i] = Math.sqrt(conductivity * dx[i] / dy);
        }
        main[0] = side;
        for (int i = 0; i + 1 < columns; i++) {
            double along = conductivity * dy / (0.5 * (dx[i] + dx[i + 1]));
            main[i] += along;
            main[i + 1] += along;
            beside[i] = -along / (root[i] * root[i + 1]);
        }
        for (int i = 0; i < columns; i++) {
            main[i] /= root[i] * root[i];
        }
        EigenDecomposition decomposition = new EigenDecomposition(main, beside);
        eigenvalues = decomposition.getRealEigenvalues();
        modes = decomposition.getV().getData();
    }

    /**
     * Adds what the strip does to its ends.
     *
     * @param system equations of all ends
     * @param first equation of the first volume of the first row
     * @param last equation of the first volume of the last row, behind those of the first row
     */
    void addTo(EnvelopeCholesky system, int first, int last) {
        double[] own = new double[columns];
        double[] other = new double[columns];
        for (int m = 0; m < columns; m++) {
            own[m] = Math.max(0, eigenvalues[m]) + 1 - nearer(m);
            other[m] = -farther(m);
        }
        for (int i = 0; i < columns; i++) {
            for (int k = 0; k < columns; k++) {
                double self = 0;
                double across = 0;
                for (int m = 0; m < columns; m++) {
                    double product = modes[i][m] * modes[k][m];
                    self += product * own[m];
                    across += product * other[m];
                }
                double scale = root[i] * root[k];
                if (k <= i) {
                    system.add(first + i, first + k, scale * self);
                    system.add(last + i, last + k, scale * self);
                }
                system.add(last + i, first + k, scale * across);
            }
        }
    }

    /** Heat that all rows give the coolant beside them, by their first and last rows (W/m). */
    double toSide(double[] t, int first, int last) {
        double sum = 0;
        for (int m = 0; m < columns; m++) {
            double ends = 0;
            for (int i = 0; i < columns; i++) {
                ends += root[i] * modes[i][m] * (t[first + i] + t[last + i]);
            }
            sum += modes[0][m] * ends * shareOfAll(m);
        }
        return side * sum / root[0];
    }

    private double psi(int mode) {
        double half = 0.5 * Math.max(0, eigenvalues[mode]);
        return Math.log1p(half + Math.sqrt(half * (half + 2)));
    }

    /** sinh (N-1)ψ/sinh Nψ. */
    private double nearer(int mode) {
        double psi = psi(mode);
        int n = rows - 1;
        return psi > 0
                ? Math.exp(-psi) * Math.expm1(-2 * (n - 1) * psi) / Math.expm1(-2 * n * psi)
                : (n - 1) / (double) n;
    }

    /** sinh ψ/sinh Nψ. */
    private double farther(int mode) {
        double psi = psi(mode);
        int n = rows - 1;
        return psi > 0 ? Math.exp(-(n - 1) * psi) * Math.expm1(-2 * psi) / Math.expm1(-2 * n * psi) : 1.0 / n;
    }

    /** Sum of sinh jψ/sinh Nψ over all rows: what an end of one gives all rows together. */
    private double shareOfAll(int mode) {
        double psi = psi(mode);
        int n = rows - 1;
        // Σ sinh jψ from 0 to N is sinh(Nψ/2) sinh((N+1)ψ/2)/sinh(ψ/2)
        return psi > 0 ? Math.expm1(-(n + 1) * psi) / (Math.expm1(-psi) * (1 + Math.exp(-n * psi))) : 0.5 * (n + 1);
    }
}
