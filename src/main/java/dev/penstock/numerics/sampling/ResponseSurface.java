package dev.penstock.numerics.sampling;

import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * A quantity over some unknowns, learnt from some of its values: least squares on the squares, products and cubes of coordinates in
 * which it is about straight, of the logarithm where the quantity is positive [box-wilson-1951].
 * <pre>ln y = a + Σ bᵢ tᵢ + Σ cᵢⱼ tᵢ tⱼ + Σ dᵢ tᵢ³,  t = coordinates of about −1 to 1</pre>
 * What it is off by is measured on every third value, which the fit does not see. Immutable.
 */
public final class ResponseSurface {

    public static final ModelCard CARD = new ModelCard(
            "numerics.response-surface",
            "Response surface of the second order with cubes",
            "ln y = a + sum b_i t_i + sum c_ij t_i t_j + sum d_i t_i^3",
            "smooth quantities; leads the way only, no answer is read off it",
            "root mean square on values that the fit did not see, told by each surface",
            List.of("box-wilson-1951"));

    /** One value in so many is held back. */
    private static final int HELD = 3;

    private static final double LEAST_ABOVE_TERMS = 1.2;

    /** What a surface is made of: as much as the values settle. */
    enum Terms {
        STRAIGHT,
        SQUARES,
        ALL;

        int count(int d) {
            return 1
                    + switch (this) {
                        case STRAIGHT -> d;
                        case SQUARES -> 2 * d;
                        case ALL -> 2 * d + d * (d + 1) / 2;
                    };
        }

        double[] row(double[] t) {
            int d = t.length;
            double[] row = new double[count(d)];
            int k = 0;
            row[k++] = 1;
            for (int i = 0; i < d; i++) {
                row[k++] = t[i];
            }
            for (int i = 0; i < d && this != STRAIGHT; i++) {
                row[k++] = t[i] * t[i];
            }
            for (int i = 0; i < d && this == ALL; i++) {
                row[k++] = t[i] * t[i] * t[i];
                for (int j = 0; j < i; j++) {
                    row[k++] = t[i] * t[j];
                }
            }
            return row;
        }
    }

    private final Terms terms;
    private final double[] coefficients;
    private final boolean logarithmic;
    private final double error;

    private ResponseSurface(Terms terms, double[] coefficients, boolean logarithmic, double error) {
        this.terms = terms;
        this.coefficients = coefficients;
        this.logarithmic = logarithmic;
        this.error = error;
    }

    /**
     * @param dimensions number of unknowns
     * @return how many points a surface should be learnt from
     */
    public static int wanted(int dimensions) {
        return 3 * Terms.ALL.count(dimensions);
    }

    /**
     * @param places coordinates of points
     * @param values the quantity there; points without a finite one are left out
     * @return the surface, of as many terms as the values settle; empty if they do not settle a plane
     */
    public static Optional<ResponseSurface> of(List<double[]> places, double[] values) {
        List<double[]> at = new ArrayList<>();
        List<Double> known = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i])) {
                at.add(places.get(i));
                known.add(values[i]);
            }
        }
        int fitted = at.size() - (at.size() + HELD - 1) / HELD;
        for (Terms terms : List.of(Terms.ALL, Terms.SQUARES, Terms.STRAIGHT)) {
            if (fitted > 0 && fitted >= LEAST_ABOVE_TERMS * terms.count(at.get(0).length)) {
                return fitted(terms, at.stream().map(terms::row).toList(), known);
            }
        }
        return Optional.empty();
    }

    private static Optional<ResponseSurface> fitted(Terms terms, List<double[]> rows, List<Double> known) {
        boolean logarithmic = known.stream().allMatch(v -> v > 0);
        List<double[]> fitted = new ArrayList<>();
        List<Double> aims = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (i % HELD != 0) {
                fitted.add(rows.get(i));
                aims.add(logarithmic ? Math.log(known.get(i)) : known.get(i));
            }
        }
        try {
            RealVector solved = new QRDecomposition(new Array2DRowRealMatrix(fitted.toArray(double[][]::new)), 1e-12)
                    .getSolver()
                    .solve(new ArrayRealVector(aims.toArray(Double[]::new)));
            double squares = 0;
            int count = 0;
            for (int i = 0; i < rows.size(); i += HELD) {
                double off = solved.dotProduct(new ArrayRealVector(rows.get(i)))
                        - (logarithmic ? Math.log(known.get(i)) : known.get(i));
                squares += off * off;
                count++;
            }
            return Optional.of(new ResponseSurface(terms, solved.toArray(), logarithmic, Math.sqrt(squares / count)));
        } catch (SingularMatrixException e) {
            return Optional.empty();
        }
    }

    /**
     * @param place coordinates of a point
     * @return the quantity there, about
     */
    public double value(double[] place) {
        double[] row = terms.row(place);
        double sum = 0;
        for (int k = 0; k < row.length; k++) {
            sum += coefficients[k] * row[k];
        }
        return logarithmic ? Math.exp(sum) : sum;
    }

    /**
     * @param value a value of the surface
     * @return standard deviation of the quantity about it, in its unit
     */
    public double error(double value) {
        return logarithmic ? error * Math.abs(value) : error;
    }
}
