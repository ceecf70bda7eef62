package dev.penstock.numerics.sampling;

import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * A share between nothing and one over some unknowns, learnt from some of its values: of engines that close, say.
 * <pre>
 * p = 1/(1 + exp(−z)),  z = a + Σ bᵢ tᵢ + Σ cᵢ tᵢ²,  t = coordinates of about −1 to 1
 * greatest of  Σ (y ln p + (1 − y) ln(1 − p)) − ½ Σ (b² + c²),  by Newton's steps
 * </pre>
 * The last term is a normal belief of deviation one in each coefficient; it keeps few values from claiming much. Immutable.
 */
public final class ShareSurface {

    public static final ModelCard CARD = new ModelCard(
            "numerics.share-surface",
            "Logistic surface of a share",
            "p = 1/(1 + exp(-z)), z = a + sum b_i t_i + sum c_i t_i^2, by penalised likelihood",
            "leads the way only, no answer is read off it",
            "none: it never says less than a twentieth",
            List.of("cox-1958"));

    /** What was never seen may still be. */
    private static final double LEAST = 0.05;

    private static final int STEPS = 12;
    private static final double PENALTY = 1;

    private final double[] coefficients;

    private ShareSurface(double[] coefficients) {
        this.coefficients = coefficients;
    }

    /**
     * @param places coordinates of points, one or more
     * @param shares the share there (-), 0 to 1
     * @return the surface
     */
    public static ShareSurface of(List<double[]> places, double[] shares) {
        List<double[]> rows = new ArrayList<>();
        places.forEach(p -> rows.add(ResponseSurface.Terms.SQUARES.row(p)));
        int terms = rows.get(0).length;
        RealVector at = new ArrayRealVector(terms);
        for (int step = 0; step < STEPS; step++) {
            double[] slope = new double[terms];
            double[][] bend = new double[terms][terms];
            for (int k = 0; k < terms; k++) {
                // The first term is what is true everywhere: little is believed of it beforehand.
                double penalty = k == 0 ? 0.01 * PENALTY : PENALTY;
                slope[k] = -penalty * at.getEntry(k);
                bend[k][k] = penalty;
            }
            for (int i = 0; i < rows.size(); i++) {
                double[] row = rows.get(i);
                double p = logistic(at.dotProduct(new ArrayRealVector(row, false)));
                for (int k = 0; k < terms; k++) {
                    slope[k] += (shares[i] - p) * row[k];
                    for (int j = 0; j < terms; j++) {
                        bend[k][j] += p * (1 - p) * (row[k] * row[j]);
                    }
                }
            }
            RealMatrix curvature = new Array2DRowRealMatrix(bend, false);
            at = at.add(new CholeskyDecomposition(curvature).getSolver().solve(new ArrayRealVector(slope, false)));
        }
        return new ShareSurface(at.toArray());
    }

    /**
     * @param place coordinates of a point
     * @return the share there (-), about; a twentieth at least
     */
    public double value(double[] place) {
        double[] row = ResponseSurface.Terms.SQUARES.row(place);
        double sum = 0;
        for (int k = 0; k < row.length; k++) {
            sum += coefficients[k] * row[k];
        }
        return LEAST + (1 - LEAST) * logistic(sum);
    }

    private static double logistic(double z) {
        return 1 / (1 + Math.exp(-z));
    }
}
