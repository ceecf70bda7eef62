package dev.penstock.fluids.table;

import dev.penstock.fluids.state.FluidSamples.Property;
import dev.penstock.numerics.EvenCurve;
import java.util.Arrays;

/**
 * Both sides of a fluid's boiling line, as its {@link FluidTable} has them: temperature and enthalpies are the borders of the
 * table's regions themselves, so that a state on one side of them lies in that region to the last bit; what else is known of
 * the phases is read along those borders once. Everything is a cubic over u = (ln(p_c/p))^½, in which both sides are smooth up to the
 * critical point. Immutable.
 */
public final class BoilingLine {

    private static final int NODES = 257;

    private static final int SIDES = 2;

    private final double critical;
    private final double deepest;
    private final EvenCurve temperature;
    private final EvenCurve[] enthalpy;
    private final EvenCurve[][] values;

    private BoilingLine(
            double critical, double deepest, EvenCurve temperature, EvenCurve[] enthalpy, EvenCurve[][] values) {
        this.critical = critical;
        this.deepest = deepest;
        this.temperature = temperature;
        this.enthalpy = enthalpy;
        this.values = values;
    }

    static BoilingLine of(FluidTable table, double critical, EvenCurve temperature) {
        TableRegion[] regions = {table.liquid(), table.vapour()};
        EvenCurve[] enthalpy = {regions[0].top(), regions[1].bottom()};
        double deepest = regions[0].highest();
        EvenCurve[][] values = new EvenCurve[SIDES][Property.values().length];
        for (int side = 0; side < SIDES; side++) {
            double[][] nodes = new double[Property.values().length][NODES];
            for (int i = 0; i < NODES; i++) {
                read(regions[side], i / (NODES - 1.0), 1 - side, nodes, i);
            }
            for (Property property : Property.values()) {
                values[side][property.ordinal()] = new EvenCurve(0, deepest, whole(nodes[property.ordinal()]));
            }
        }
        return new BoilingLine(critical, deepest, temperature, enthalpy, values);
    }

    private static void read(TableRegion region, double across, double up, double[][] nodes, int node) {
        double[] place = new double[3];
        int patch = region.find(across, up, place);
        double[] coefficients = new double[FluidTable.PATCH];
        if (patch != TableRegion.NOT_SERVED) {
            region.read(patch, coefficients);
        }
        for (Property property : Property.values()) {
            int from = property.ordinal() * PatchBasis.SIZE;
            nodes[property.ordinal()][node] = patch == TableRegion.NOT_SERVED
                    ? Double.NaN
                    : PatchBasis.value(
                            Arrays.copyOfRange(coefficients, from, from + PatchBasis.SIZE), place[0], place[1]);
        }
    }

    /** Nodes beside which no patch serves take the value of their neighbour. */
    private static double[] whole(double[] nodes) {
        for (int i = nodes.length - 2; i >= 0; i--) {
            nodes[i] = Double.isNaN(nodes[i]) ? nodes[i + 1] : nodes[i];
        }
        for (int i = 1; i < nodes.length; i++) {
            nodes[i] = Double.isNaN(nodes[i]) ? nodes[i - 1] : nodes[i];
        }
        return nodes;
    }

    /** @return pressure at which the phases become one (Pa) */
    public double criticalPressure() {
        return critical;
    }

    /** @return lowest pressure of the line (Pa) */
    public double lowestPressure() {
        return critical * Math.exp(-deepest * deepest);
    }

    /**
     * @param pressure pressure (Pa)
     * @return u, where everything is asked for: 0 at the critical pressure
     */
    public double place(double pressure) {
        return Math.sqrt(Math.max(0, Math.log(critical / pressure)));
    }

    /** @return boiling temperature (K) at a place */
    public double temperature(double place) {
        return temperature.at(place);
    }

    /**
     * @param vapour which phase
     * @param place u
     * @return its enthalpy (J/kg)
     */
    public double enthalpy(boolean vapour, double place) {
        return enthalpy[vapour ? 1 : 0].at(place);
    }

    /**
     * @param vapour which phase
     * @param property property
     * @param place u
     * @return its value, SI
     */
    public double value(boolean vapour, Property property, double place) {
        return values[vapour ? 1 : 0][property.ordinal()].at(place);
    }
}
