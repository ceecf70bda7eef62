package dev.penstock.numerics.design;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Latin hypercube: each axis is cut into as many equal slices as there are points, and each slice holds one point, at random
 * inside it. McKay, Beckman and Conover 1979.
 */
public final class LatinHypercube implements UnitDesign {

    /** What the points are. */
    public static final ModelCard CARD = new ModelCard(
            "numerics.design.latin-hypercube",
            "Latin hypercube",
            "x[i][d] = (order_d(i) + u) / n, u uniform in [0, 1)",
            "1 to 10,000,000 points",
            "means vary by no more than those of independent points",
            List.of("mckay-1979"));

    private final int size;
    private final Permutation[] orders;
    private final long seed;

    /**
     * @param size number of points, 1 or more
     * @param dimensions number of coordinates, 1 or more
     * @param seed chooses one of all such designs
     */
    public LatinHypercube(int size, int dimensions, long seed) {
        this.size = size;
        this.seed = seed;
        this.orders = new Permutation[dimensions];
        for (int d = 0; d < dimensions; d++) {
            orders[d] = new Permutation(size, Hash.of(seed, 2L * d));
        }
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public int dimensions() {
        return orders.length;
    }

    @Override
    public void point(int index, double[] point) {
        for (int d = 0; d < orders.length; d++) {
            point[d] = (orders[d].at(index) + Hash.share(Hash.of(seed, 2L * d + 1), index)) / size;
        }
    }
}
