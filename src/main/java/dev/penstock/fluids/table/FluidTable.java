package dev.penstock.fluids.table;

import dev.penstock.errors.Require;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidRange;
import dev.penstock.fluids.state.FluidSamples;
import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.fluids.state.Phase;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Properties of a fluid on a grid of pressure (logarithmic) and enthalpy (logarithmic from a little below the lowest, so
 * that nodes crowd where the fluid is cold and dense), read by cubic interpolation in both. Holds a cell only if its
 * sixteen nodes lie on one side of the saturation curve and its estimated error is below {@value #ERROR_LIMIT}: the
 * estimate compares each node with the cubic through its neighbours at twice the spacing, whose error is sixteen times
 * that of the table. Everywhere else, and outside the grid, {@link #cursor()} asks the full model. Immutable and safe to share; a cursor is not.
 */
public final class FluidTable {

    public static final ModelCard CARD = new ModelCard(
            "fluids.table",
            "Cubic interpolation of fluid properties in pressure and enthalpy",
            "f(p, h) = sum over 4 x 4 nodes of L_i(ln p) L_j(y) f_ij, y = ln(1 + (h - h_low) / (c (h_high - h_low))), c ="
                    + " T_min / T_max of the fluid's model, Lagrange polynomials on a grid uniform in ln p and y",
            "cells in one phase where nodes left out are met within 0.1 %; the full model elsewhere",
            "0.1 % of each property against the full model",
            List.of("common practice, no source"));

    /**
     * Largest relative miss at a node. A smooth function then errs sixteen times less; a jump, such as some published
     * conductivities have at the edge of their critical enhancement, no more than this.
     */
    static final double ERROR_LIMIT = 1e-3;

    static final int STENCIL = 4;

    /** Nodes in pressure and enthalpy that keep a jacket's range within the error limit. */
    private static final int DEFAULT_PRESSURES = 24;

    private static final int DEFAULT_ENTHALPIES = 180;

    /** Keeps the hot end from growing coarse (-). */
    private static final double MOST_CROWDED = 0.01;

    private static final byte ONE_PHASE = 0;
    private static final byte LIQUID_SIDE = 1;
    private static final byte GAS_SIDE = 2;
    private static final byte NONE = 3;

    private final Fluid fluid;
    private final int pressures;
    private final int enthalpies;
    private final double logLow;
    private final double logStep;
    private final double enthalpyLow;
    private final double enthalpyScale;
    private final double enthalpyStep;
    private final double[][] columns = new double[Property.values().length][];
    private final boolean[] usable;

    private FluidTable(Fluid fluid, double pLow, double pHigh, double hLow, double hHigh, int nP, int nH) {
        this.fluid = fluid;
        this.logStep = Math.log(pHigh / pLow) / (nP - 1);
        this.enthalpyLow = hLow;
        double crowding = crowding(fluid.range());
        this.enthalpyScale = crowding * (hHigh - hLow);
        this.enthalpyStep = Math.log(1 + 1 / crowding) / (nH - 1);
        this.logLow = Math.log(pLow) - logStep;
        this.pressures = nP + 2;
        this.enthalpies = nH + 2;
        for (int c = 0; c < columns.length; c++) {
            columns[c] = new double[pressures * enthalpies];
        }
        this.usable = usableCells(fill());
    }

    /**
     * A table with the usual number of nodes.
     *
     * @param fluid fluid
     * @param lowestPressure lowest pressure (Pa)
     * @param highestPressure highest pressure (Pa)
     * @param lowestEnthalpy lowest enthalpy (J/kg)
     * @param highestEnthalpy highest enthalpy (J/kg)
     * @return the table; one node is added beyond each end
     */
    public static FluidTable build(
            Fluid fluid, double lowestPressure, double highestPressure, double lowestEnthalpy, double highestEnthalpy) {
        return build(
                fluid,
                lowestPressure,
                highestPressure,
                lowestEnthalpy,
                highestEnthalpy,
                DEFAULT_PRESSURES,
                DEFAULT_ENTHALPIES);
    }

    /**
     * @param fluid fluid
     * @param lowestPressure lowest pressure (Pa)
     * @param highestPressure highest pressure (Pa)
     * @param lowestEnthalpy lowest enthalpy (J/kg)
     * @param highestEnthalpy highest enthalpy (J/kg)
     * @param pressures nodes in pressure, at least 4
     * @param enthalpies nodes in enthalpy, at least 4
     * @return the table; one node is added beyond each end
     */
    public static FluidTable build(
            Fluid fluid,
            double lowestPressure,
            double highestPressure,
            double lowestEnthalpy,
            double highestEnthalpy,
            int pressures,
            int enthalpies) {
        Require.positive("fluid table", "lowest pressure (Pa)", lowestPressure);
        Require.within("fluid table", "highest pressure (Pa)", highestPressure, lowestPressure * 1.000001, 1e10);
        Require.positive("fluid table", "span of enthalpy (J/kg)", highestEnthalpy - lowestEnthalpy);
        Require.within("fluid table", "nodes (-)", Math.min(pressures, enthalpies), STENCIL, 1e5);
        return new FluidTable(
                fluid, lowestPressure, highestPressure, lowestEnthalpy, highestEnthalpy, pressures, enthalpies);
    }

    /**
     * Share of the span of enthalpy over which the nodes crowd at the cold end: at a constant heat capacity and from end to
     * end of the fluid's model they then lie evenly in the logarithm of temperature.
     */
    private static double crowding(FluidRange range) {
        double ratio = range.minimumTemperature() / range.maximumTemperature();
        return Math.max(MOST_CROWDED, Math.min(1, ratio));
    }

    private byte[] fill() {
        int count = pressures * enthalpies;
        int[] nodes = new int[count];
        double[] p = new double[count];
        double[] h = new double[count];
        for (int k = 0; k < count; k++) {
            int i = k / enthalpies;
            int j = i % 2 == 0 ? k % enthalpies : enthalpies - 1 - k % enthalpies; // to and fro: neighbours are near
            nodes[k] = i * enthalpies + j;
            p[k] = Math.exp(logLow + i * logStep);
            h[k] = enthalpyAt(j);
        }
        byte[] sides = new byte[count];
        double critical = fluid.criticalPressure().orElse(0);
        try (FluidCursor cursor = fluid.cursor()) {
            FluidSamples samples = cursor.sample(p, h);
            for (int k = 0; k < count; k++) {
                sides[nodes[k]] = fill(samples, k, nodes[k], p[k] >= critical);
            }
        }
        return sides;
    }

    private byte fill(FluidSamples samples, int k, int node, boolean aboveCritical) {
        if (!samples.holds(k)) {
            return NONE;
        }
        for (Property property : Property.values()) {
            columns[property.ordinal()][node] = samples.value(property, k);
        }
        if (aboveCritical) {
            return ONE_PHASE;
        }
        return samples.phase(k) == Phase.LIQUID ? LIQUID_SIDE : GAS_SIDE;
    }

    private boolean[] usableCells(byte[] sides) {
        boolean[] good = new boolean[pressures * enthalpies];
        for (int i = 0; i < pressures; i++) {
            for (int j = 0; j < enthalpies; j++) {
                good[i * enthalpies + j] = accurate(sides, i, j);
            }
        }
        boolean[] cells = new boolean[pressures * enthalpies];
        for (int i = 0; i + 1 < pressures; i++) {
            for (int j = 0; j + 1 < enthalpies; j++) {
                int node = i * enthalpies + j;
                cells[node] = oneSide(sides, start(i, pressures), start(j, enthalpies))
                        && good[node]
                        && good[node + 1]
                        && good[node + enthalpies]
                        && good[node + enthalpies + 1];
            }
        }
        return cells;
    }

    /** First node of the four around an interval. */
    static int start(int interval, int count) {
        return Math.max(0, Math.min(interval - 1, count - STENCIL));
    }

    private boolean oneSide(byte[] sides, int i0, int j0) {
        boolean liquid = false;
        boolean gas = false;
        for (int i = i0; i < i0 + STENCIL; i++) {
            for (int j = j0; j < j0 + STENCIL; j++) {
                byte side = sides[i * enthalpies + j];
                if (side == NONE) {
                    return false;
                }
                liquid |= side == LIQUID_SIDE;
                gas |= side == GAS_SIDE;
            }
        }
        return !(liquid && gas);
    }

    /** Whether the cubic through the neighbours at twice the spacing, in either direction, agrees with the node. */
    private boolean accurate(byte[] sides, int i, int j) {
        if (sides[i * enthalpies + j] == NONE) {
            return false;
        }
        int iMid = Math.max(3, Math.min(i, pressures - STENCIL));
        int jMid = Math.max(3, Math.min(j, enthalpies - STENCIL));
        for (double[] column : columns) {
            double error = (pressures > 6 ? missed(sides, column, iMid * enthalpies + j, enthalpies) : 0)
                    + (enthalpies > 6 ? missed(sides, column, i * enthalpies + jMid, 1) : 0);
            double size = Math.max(Math.abs(column[i * enthalpies + j]), smallest(column));
            if (error > ERROR_LIMIT * size) {
                return false;
            }
        }
        return true;
    }

    /** Entropy may pass through zero: there its error is judged against a heat capacity's size. */
    private double smallest(double[] column) {
        return column == columns[Property.ENTROPY.ordinal()] ? 1000 : 0;
    }

    private static double missed(byte[] sides, double[] f, int node, int stride) {
        for (int k = -3; k <= 3; k++) {
            if (sides[node + k * stride] == NONE) {
                return 0; // beside saturation: such a stencil is refused anyway, or has neighbours that are judged
            }
        }
        double cubic = (9 * (f[node - stride] + f[node + stride]) - f[node - 3 * stride] - f[node + 3 * stride]) / 16;
        return Math.abs(cubic - f[node]);
    }

    /** @return the fluid */
    public Fluid fluid() {
        return fluid;
    }

    /** @return a new cursor: the table where it holds, the full model elsewhere; the caller closes it */
    public FluidCursor cursor() {
        return new FluidTableCursor(this);
    }

    double pressurePosition(double pressure) {
        return (Math.log(pressure) - logLow) / logStep;
    }

    /** Minus infinity where the logarithm has no value, so that such a state lies off the grid. */
    double enthalpyPosition(double enthalpy) {
        return 1 + Math.log(Math.max(0, 1 + (enthalpy - enthalpyLow) / enthalpyScale)) / enthalpyStep;
    }

    double enthalpyAt(double position) {
        return enthalpyLow + enthalpyScale * (Math.exp((position - 1) * enthalpyStep) - 1);
    }

    int pressures() {
        return pressures;
    }

    int enthalpies() {
        return enthalpies;
    }

    boolean usable(int i, int j) {
        return usable[i * enthalpies + j];
    }

    double[] column(Property property) {
        return columns[property.ordinal()];
    }
}
