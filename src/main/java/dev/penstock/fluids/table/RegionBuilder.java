package dev.penstock.fluids.table;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidSamples;
import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.fluids.state.Phase;
import dev.penstock.numerics.EvenCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

/**
 * Cuts a region into patches. A patch is good when its highest terms add less than the tolerance of every property; else it is
 * cut in half, in the direction whose terms are the larger. Where that ends, a patch within the widest error still serves. Beside
 * the critical point, where no polynomial follows the fluid, a rough one serves: of degree 1 by 1 for each property whose highest
 * terms are not small. What the search for many states at once does not find there is sought one by one. Where some nodes
 * have no state, the full model answers.
 */
final class RegionBuilder {

    private static final int ORDER = PatchBasis.ORDER;
    private static final int NODES = PatchBasis.SIZE;
    private static final Property[] PROPERTIES = Property.values();

    /** Cuts in the coordinate of pressure and in enthalpy, at first and at most. */
    private static final int[] FEWEST = {1, 2};

    private static final int MOST_IN_X = 6;
    private static final int FEWEST_MOST_IN_Y = 10;

    /** By how many cuts in enthalpy less the edge of where states are known is followed. */
    private static final int COARSER_EDGE = 2;

    /** Nodes of a patch that may take the values of others. */
    private static final int MOST_COPIED = NODES / 2;

    /** The finest patch of enthalpy at the cold end covers about this share of the lowest temperature at most (-). */
    private static final double COLD_SHARE = 0.1;

    private final FluidCursor cursor;
    private final DoubleUnaryOperator pressure;
    private final double low;
    private final double high;
    private final EvenCurve bottom;
    private final EvenCurve top;
    private final int[] most;
    private final int[] mostAtEdge;
    private final DoublePredicate rough;
    private final List<Cell> cells = new ArrayList<>();
    private final NumberList patches = new NumberList();
    private int count;

    /** A part of the rectangle; where it was cut, and what became of it. */
    private static final class Cell {

        final double left;
        final double floor;
        final int[] cuts;
        int cut = TableRegion.LEAF;
        int next = TableRegion.NOT_SERVED;

        /** The smallest cell around this one whose states are known, and their polynomials; the first search starts there. */
        Cell guide;

        double[] density;
        double[] temperature;

        Cell(double left, double floor, int inX, int inY) {
            this.left = left;
            this.floor = floor;
            this.cuts = new int[] {inX, inY};
        }

        void learn(FluidSamples samples, int at) {
            double[] values = new double[NODES];
            RegionBuilder.values(samples, Property.DENSITY, at, values);
            density = PatchBasis.powers(values);
            RegionBuilder.values(samples, Property.TEMPERATURE, at, values);
            temperature = PatchBasis.powers(values);
        }

        double guess(double[] polynomial, double across, double up) {
            return PatchBasis.value(polynomial, 2 * (across - left) / width() - 1, 2 * (up - floor) / height() - 1);
        }

        double width() {
            return Math.scalb(1.0, -cuts[0]);
        }

        double height() {
            return Math.scalb(1.0, -cuts[1]);
        }
    }

    /**
     * @param cursor the full model
     * @param pressure pressure (Pa) over the coordinate x
     * @param low lowest x
     * @param high highest x
     * @param bottom lowest enthalpy over x (J/kg)
     * @param top highest enthalpy over x (J/kg)
     * @param warming highest temperature of the region over the lowest (-)
     * @param rough whether rough patches serve at a pressure (Pa) where no good ones can be had
     */
    RegionBuilder(
            FluidCursor cursor,
            DoubleUnaryOperator pressure,
            double low,
            double high,
            EvenCurve bottom,
            EvenCurve top,
            double warming,
            DoublePredicate rough) {
        this.cursor = cursor;
        this.pressure = pressure;
        this.low = low;
        this.high = high;
        this.bottom = bottom;
        this.top = top;
        double halvings = Math.log(warming / COLD_SHARE) / Math.log(2);
        this.most = new int[] {MOST_IN_X, Math.max(FEWEST_MOST_IN_Y, (int) Math.ceil(halvings))};
        this.mostAtEdge = new int[] {most[0], most[1] - COARSER_EDGE};
        this.rough = rough;
    }

    /** Builds the region and writes it down. */
    void write(NumberList out) {
        List<Cell> open = new ArrayList<>();
        open.add(new Cell(0, 0, 0, 0));
        cells.addAll(open);
        while (!open.isEmpty()) {
            open = judged(open);
        }
        out.add(low);
        out.add(high);
        out.addList(bottom.nodes());
        out.addList(top.nodes());
        out.add(cells.size());
        for (Cell cell : cells) {
            out.add(cell.cut);
            out.add(cell.next);
        }
        out.add(count);
        out.addAll(patches.toArray());
    }

    private List<Cell> judged(List<Cell> open) {
        List<Cell> later = new ArrayList<>();
        List<Cell> asked = new ArrayList<>();
        for (Cell cell : open) {
            if (cell.cuts[0] < FEWEST[0]) {
                cut(cell, 0, later);
            } else if (cell.cuts[1] < FEWEST[1]) {
                cut(cell, 1, later);
            } else {
                asked.add(cell);
            }
        }
        if (!asked.isEmpty()) {
            FluidSamples samples = sample(asked);
            for (int i = 0; i < asked.size(); i++) {
                judge(asked.get(i), samples, i * NODES, later);
            }
        }
        return later;
    }

    private FluidSamples sample(List<Cell> asked) {
        double[] p = new double[asked.size() * NODES];
        double[] h = new double[p.length];
        double[] rho = new double[p.length];
        double[] t = new double[p.length];
        int k = 0;
        for (Cell cell : asked) {
            for (int i = 0; i < ORDER; i++) {
                double across = cell.left + cell.width() * 0.5 * (1 + PatchBasis.NODES[i]);
                double x = low + (high - low) * across;
                double from = bottom.at(x);
                double to = top.at(x);
                for (int j = 0; j < ORDER; j++) {
                    double up = cell.floor + cell.height() * 0.5 * (1 + PatchBasis.NODES[j]);
                    p[k] = pressure.applyAsDouble(x);
                    h[k] = from + up * (to - from);
                    Cell guide = cell.guide;
                    rho[k] = guide == null ? Double.NaN : guide.guess(guide.density, across, up);
                    t[k++] = guide == null ? Double.NaN : guide.guess(guide.temperature, across, up);
                }
            }
        }
        return cursor.sample(p, h, rho, t);
    }

    private void judge(Cell cell, FluidSamples samples, int at, List<Cell> later) {
        int held = 0;
        for (int k = 0; k < NODES; k++) {
            held += samples.holds(at + k) ? 1 : 0;
        }
        if (held < NODES) {
            int first = cell.cuts[1] - 3 <= cell.cuts[0] ? 1 : 0;
            boolean cut = held > 0
                    && (cutIfAllowed(cell, first, mostAtEdge, later)
                            || cutIfAllowed(cell, 1 - first, mostAtEdge, later));
            if (cut || !mayBeRough(cell) || !completed(cell, samples, at)) {
                return;
            }
        }
        cell.learn(samples, at);
        double[] values = new double[NODES];
        double[] tail = new double[2];
        double[] worst = new double[2];
        double beyond = 0;
        for (Property property : PROPERTIES) {
            double size = values(samples, property, at, values);
            PatchBasis.tail(values, tail);
            worst[0] = Math.max(worst[0], tail[0] / (size * TableError.aim(property)));
            worst[1] = Math.max(worst[1], tail[1] / (size * TableError.aim(property)));
            beyond = Math.max(beyond, Math.max(tail[0], tail[1]) / (size * TableError.most(property)));
        }
        if (Math.max(worst[0], worst[1]) > 1) {
            int first = worst[0] > worst[1] ? 0 : 1;
            if (cutIfAllowed(cell, first, most, later)
                    || worst[1 - first] > 1 && cutIfAllowed(cell, 1 - first, most, later)) {
                return;
            }
            if (beyond > 1 && !mayBeRough(cell)) {
                return;
            }
        }
        cell.next = count++;
        for (Property property : PROPERTIES) {
            double size = values(samples, property, at, values);
            PatchBasis.tail(values, tail);
            boolean follows = property == Property.ENTROPY || Math.max(tail[0], tail[1]) <= size * TableError.FOLLOWED;
            patches.addAll(follows ? PatchBasis.powers(values) : PatchBasis.level(values));
        }
    }

    private boolean mayBeRough(Cell cell) {
        double left = low + (high - low) * cell.left;
        double right = left + (high - low) * cell.width();
        return rough.test(pressure.applyAsDouble(left)) || rough.test(pressure.applyAsDouble(right));
    }

    /**
     * Seeks the states of a cell that were not found among many, one by one; says no if the model lacks one of them. Where a border
     * was carried through, beside the critical point, a state may lie between the phases, and conductivity may have no value: the
     * nearest state of the cell that has everything serves.
     */
    private boolean completed(Cell cell, FluidSamples samples, int at) {
        for (int i = 0; i < ORDER; i++) {
            double x = low + (high - low) * (cell.left + cell.width() * 0.5 * (1 + PatchBasis.NODES[i]));
            double from = bottom.at(x);
            double height = top.at(x) - from;
            for (int j = 0; j < ORDER; j++) {
                int node = at + i * ORDER + j;
                double up = cell.floor + cell.height() * 0.5 * (1 + PatchBasis.NODES[j]);
                if (!samples.holds(node) && !exists(samples, node, pressure.applyAsDouble(x), from + up * height)) {
                    return false;
                }
            }
        }
        boolean[] own = new boolean[NODES];
        int owned = 0;
        for (int k = 0; k < NODES; k++) {
            own[k] = samples.holds(at + k);
            owned += own[k] ? 1 : 0;
        }
        if (owned < NODES - MOST_COPIED) {
            return false;
        }
        for (int k = 0; k < NODES; k++) {
            if (!own[k]) {
                int from = at + nearest(own, k);
                for (Property property : PROPERTIES) {
                    samples.set(property, at + k, samples.value(property, from));
                }
                samples.hold(at + k, samples.phase(from));
            }
        }
        return true;
    }

    private static int nearest(boolean[] own, int node) {
        int best = -1;
        double closest = Double.POSITIVE_INFINITY;
        for (int k = 0; k < NODES; k++) {
            double distance = Math.hypot(k / ORDER - node / ORDER, k % ORDER - node % ORDER);
            if (own[k] && distance < closest) {
                closest = distance;
                best = k;
            }
        }
        return best;
    }

    /** Whether the model has a state; the samples take it if it has one phase and every property. */
    private boolean exists(FluidSamples samples, int node, double p, double h) {
        try {
            cursor.setPressureEnthalpy(p, h);
        } catch (PropertyFailure e) {
            return false;
        }
        try {
            samples.take(node, cursor);
        } catch (PropertyFailure e) {
            return true;
        }
        for (Property property : PROPERTIES) {
            if (!(samples.value(property, node) > (property == Property.ENTROPY ? Double.NEGATIVE_INFINITY : 0))
                    || Double.isInfinite(samples.value(property, node))) {
                samples.hold(node, Phase.TWO_PHASE);
            }
        }
        return true;
    }

    /** Entropy may pass through zero: there its error is judged against a heat capacity's size. */
    private static double values(FluidSamples samples, Property property, int at, double[] values) {
        double largest = property == Property.ENTROPY ? TableError.ENTROPY_SCALE : 0;
        for (int k = 0; k < NODES; k++) {
            values[k] = samples.value(property, at + k);
            largest = Math.max(largest, Math.abs(values[k]));
        }
        return largest;
    }

    private boolean cutIfAllowed(Cell cell, int axis, int[] limit, List<Cell> later) {
        if (cell.cuts[axis] >= limit[axis]) {
            return false;
        }
        cut(cell, axis, later);
        return true;
    }

    private void cut(Cell cell, int axis, List<Cell> later) {
        cell.cut = axis;
        cell.next = cells.size();
        int inX = cell.cuts[0] + (axis == 0 ? 1 : 0);
        int inY = cell.cuts[1] + (axis == 1 ? 1 : 0);
        double right = cell.left + (axis == 0 ? 0.5 * cell.width() : 0);
        double upper = cell.floor + (axis == 1 ? 0.5 * cell.height() : 0);
        for (Cell half : List.of(new Cell(cell.left, cell.floor, inX, inY), new Cell(right, upper, inX, inY))) {
            half.guide = cell.density == null ? cell.guide : cell;
            cells.add(half);
            later.add(half);
        }
    }
}
