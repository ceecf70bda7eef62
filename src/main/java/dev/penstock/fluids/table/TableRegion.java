package dev.penstock.fluids.table;

import dev.penstock.numerics.EvenCurve;
import java.nio.DoubleBuffer;
import java.util.Arrays;

/**
 * One phase's part of a {@link FluidTable}: a rectangle in a coordinate x of pressure and the share of the enthalpy between two
 * border curves over x, cut in halves until a polynomial of two variables serves each part ({@link PatchBasis}). Immutable.
 */
final class TableRegion {

    /** What {@link #find} gives where the full model must answer. */
    static final int NOT_SERVED = -1;

    static final int LEAF = 2;

    private static final int START_COLUMNS = 16;
    private static final int START_ROWS = 32;
    private static final double NEAREST = 1e-3;

    private final double low;
    private final double width;
    private final EvenCurve bottom;
    private final EvenCurve top;

    /** Of each node: 0 cut in x, 1 cut in enthalpy, {@value #LEAF} not cut. */
    private final byte[] cut;

    /** Of each node: the lower half, which the upper one follows; or the patch of a leaf. */
    private final int[] next;

    private final DoubleBuffer numbers;
    private final int firstPatch;
    private final double[] starts = new double[(START_COLUMNS + 1) * (START_ROWS + 1)];

    /** Reads a region from where the numbers stand, and moves beyond it. */
    TableRegion(DoubleBuffer in) {
        low = in.get();
        double high = in.get();
        width = high - low;
        bottom = new EvenCurve(low, high, list(in));
        top = new EvenCurve(low, high, list(in));
        int nodes = (int) in.get();
        cut = new byte[nodes];
        next = new int[nodes];
        for (int i = 0; i < nodes; i++) {
            cut[i] = (byte) in.get();
            next[i] = (int) in.get();
        }
        int patches = (int) in.get();
        firstPatch = in.position();
        in.position(firstPatch + patches * FluidTable.PATCH);
        numbers = in;
        fillStarts();
    }

    /** Temperatures on a coarse grid, where a search by temperature starts; above the last that is served, infinity. */
    private void fillStarts() {
        double[] local = new double[3];
        double[] coefficients = new double[FluidTable.PATCH];
        Arrays.fill(starts, Double.POSITIVE_INFINITY);
        for (int i = 0; i <= START_COLUMNS; i++) {
            int at = i * (START_ROWS + 1);
            double last = 0;
            int filled = 0;
            for (int j = 0; j <= START_ROWS; j++) {
                int patch = find(i / (double) START_COLUMNS, j / (double) START_ROWS, local);
                if (patch != NOT_SERVED) {
                    Arrays.fill(starts, at + filled, at + j, last);
                    read(patch, coefficients);
                    last = Math.max(last, PatchBasis.value(coefficients, local[0], local[1]));
                    starts[at + j] = last;
                    filled = j + 1;
                }
            }
        }
    }

    /**
     * @param across share of the width
     * @param temperature temperature (K)
     * @return share of the height near which it lies, above 0 and below 1
     */
    double start(double across, double temperature) {
        int column = (int) Math.max(0, Math.min(START_COLUMNS, Math.rint(across * START_COLUMNS)));
        int at = column * (START_ROWS + 1);
        int low = 0;
        int high = START_ROWS;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (starts[at + middle] <= temperature) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double rise = starts[at + high] - starts[at + low];
        double share = rise > 0 ? (temperature - starts[at + low]) / rise : 0.5;
        return Math.max(NEAREST, Math.min(1 - NEAREST, (low + Math.max(0, Math.min(1, share))) / START_ROWS));
    }

    static double[] list(DoubleBuffer in) {
        double[] list = new double[(int) in.get()];
        in.get(list);
        return list;
    }

    /** @return share of the rectangle's width at a coordinate of pressure */
    double across(double x) {
        return (x - low) / width;
    }

    double bottom(double x) {
        return bottom.at(x);
    }

    double top(double x) {
        return top.at(x);
    }

    /** Lowest enthalpy (J/kg) over x. */
    EvenCurve bottom() {
        return bottom;
    }

    /** Highest enthalpy (J/kg) over x. */
    EvenCurve top() {
        return top;
    }

    double highest() {
        return low + width;
    }

    /**
     * @param across share of the width
     * @param up share of the height
     * @param local receives the place in the patch, −1 to 1 in both directions, and its height as a share of the region's
     * @return the patch, or {@link #NOT_SERVED}
     */
    int find(double across, double up, double[] local) {
        if (!(across >= 0 && across <= 1 && up >= 0 && up <= 1)) {
            return NOT_SERVED;
        }
        double x = across;
        double y = up;
        double height = 1;
        int node = 0;
        while (cut[node] != LEAF) {
            boolean upper;
            if (cut[node] == 0) {
                upper = x >= 0.5;
                x = 2 * x - (upper ? 1 : 0);
            } else {
                upper = y >= 0.5;
                y = 2 * y - (upper ? 1 : 0);
                height *= 0.5;
            }
            node = next[node] + (upper ? 1 : 0);
        }
        local[0] = 2 * x - 1;
        local[1] = 2 * y - 1;
        local[2] = height;
        return next[node];
    }

    /** Copies the coefficients of a patch. */
    void read(int patch, double[] coefficients) {
        numbers.get(firstPatch + patch * FluidTable.PATCH, coefficients);
    }
}
