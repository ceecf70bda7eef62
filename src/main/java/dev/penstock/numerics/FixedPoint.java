package dev.penstock.numerics;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Speeds up a repeated substitution x ← g(x) by Anderson's mixing: the next point is g at that combination of the last
 * points whose remainders g(x) − x cancel best. Source: [walker-ni-2011]. Plain substitution until two points are known.
 * Not thread-safe; one instance per iteration.
 */
public final class FixedPoint {

    private record Pair(double[] remainder, double[] image) {}

    private final int depth;
    private final double[] scale;
    private final Deque<Pair> history = new ArrayDeque<>();

    /**
     * @param depth most earlier points remembered
     * @param scale size of a change that matters, by component, above zero
     */
    public FixedPoint(int depth, double... scale) {
        this.depth = depth;
        this.scale = scale.clone();
    }

    /**
     * @param x point
     * @param image g(x)
     * @return the next point to try
     */
    public double[] next(double[] x, double[] image) {
        Cancellation.check();
        int n = x.length;
        double[] remainder = new double[n];
        for (int i = 0; i < n; i++) {
            remainder[i] = (image[i] - x[i]) / scale[i];
        }
        double[] mixed = image.clone();
        if (!history.isEmpty()) {
            mix(remainder, image, mixed);
        }
        history.addFirst(new Pair(remainder, image.clone()));
        if (history.size() > depth) {
            history.removeLast();
        }
        return mixed;
    }

    /** Forgets the earlier points, for when g itself has changed. */
    public void reset() {
        history.clear();
    }

    private void mix(double[] remainder, double[] image, double[] mixed) {
        int n = remainder.length;
        int m = history.size();
        RealMatrix differences = new Array2DRowRealMatrix(n, m);
        int column = 0;
        for (Pair earlier : history) {
            for (int i = 0; i < n; i++) {
                differences.setEntry(i, column, remainder[i] - earlier.remainder()[i]);
            }
            column++;
        }
        SingularValueDecomposition svd = new SingularValueDecomposition(differences);
        if (svd.getSingularValues()[0] == 0) {
            return;
        }
        RealVector weights = svd.getSolver().solve(new ArrayRealVector(remainder));
        column = 0;
        for (Iterator<Pair> it = history.iterator(); it.hasNext(); column++) {
            Pair earlier = it.next();
            for (int i = 0; i < n; i++) {
                mixed[i] -= weights.getEntry(column) * (image[i] - earlier.image()[i]);
            }
        }
    }
}
