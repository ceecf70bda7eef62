package dev.penstock.fluids.coolprop;

import dev.penstock.numerics.EvenCurve;
import java.nio.DoubleBuffer;
import java.util.Arrays;

/**
 * Vapour pressure of a fluid by the cubic of ln p over 1/T through the nearest four of {@value #NODES} nodes, in place of a
 * solution for both phases at each question. Within 1e-5 of the full equation (relative, tested), or within 1e-4 Pa,
 * by more than which its solution scatters at the triple point of a heavy fluid. Within a fiftieth of the critical
 * temperature, and where the equation gives no node, it is asked itself. Made of its fluid alone; immutable.
 */
final class VapourPressureCurve {

    /** Raised whenever the numbers of a curve mean something else. */
    static final int FORMAT = 3;

    static final int NODES = 600;

    private static final double INSIDE = 1e-9;
    private static final double BELOW_CRITICAL = 0.02;

    /** By how much CoolProp may miss what a stored curve has of it, before the curve is taken for another CoolProp's (-). */
    private static final double SAME = 1e-9;

    /** Each takes some two digits: between nodes the chord is nearly the curve. */
    private static final int REFINEMENTS = 5;

    private static final int[] MARKS = {0, NODES / 2, NODES - 1};

    private final double cold;
    private final double hot;
    private final EvenCurve curve;

    private VapourPressureCurve(double cold, double hot, double[] logarithms) {
        this.cold = cold;
        this.hot = hot;
        this.curve = new EvenCurve(1 / cold, 1 / hot, logarithms);
    }

    /** @return the curve as numbers: its ends (K), then ln p at the nodes */
    static double[] make(CoolPropHandle handle, double lowest, double critical) {
        double[] numbers = new double[2 + NODES];
        numbers[0] = lowest * (1 + INSIDE);
        numbers[1] = critical * (1 - BELOW_CRITICAL);
        double[] temperatures = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            temperatures[i] = node(numbers[0], numbers[1], i);
        }
        double[] pressures = handle.evaluate(
                CoolPropInputs.QUALITY_TEMPERATURE, new double[NODES], temperatures, CoolPropOutput.PRESSURE);
        for (int i = 0; i < NODES; i++) {
            numbers[2 + i] = Math.log(pressures[i]);
        }
        return numbers;
    }

    private static double node(double cold, double hot, int i) {
        double share = i / (NODES - 1.0);
        return 1 / ((1 - share) / cold + share / hot);
    }

    /** @return the curve that was written as numbers */
    static VapourPressureCurve read(DoubleBuffer numbers) {
        double cold = numbers.get();
        double hot = numbers.get();
        double[] logarithms = new double[NODES];
        numbers.get(logarithms);
        return new VapourPressureCurve(cold, hot, logarithms);
    }

    /** @return whether the fluid's equation still says what it said when the curve was made */
    boolean isOf(CoolPropHandle handle) {
        double[] temperatures =
                Arrays.stream(MARKS).mapToDouble(mark -> node(cold, hot, mark)).toArray();
        double[] pressures = handle.evaluate(
                CoolPropInputs.QUALITY_TEMPERATURE, new double[MARKS.length], temperatures, CoolPropOutput.PRESSURE);
        for (int i = 0; i < MARKS.length; i++) {
            double then = curve.nodes()[MARKS[i]];
            double now = Math.log(pressures[i]);
            if (!(Double.isNaN(then) && Double.isNaN(now) || Math.abs(now - then) <= SAME)) {
                return false;
            }
        }
        return true;
    }

    /**
     * @param pressure pressure (Pa)
     * @return temperature (K) at which the curve has it; not a number where it does not
     */
    double temperature(double pressure) {
        double wanted = Math.log(pressure);
        double[] nodes = curve.nodes();
        int below = 0;
        int above = nodes.length - 1;
        if (!(wanted >= nodes[below] && wanted <= nodes[above])) {
            return Double.NaN;
        }
        while (above - below > 1) {
            int middle = (below + above) >>> 1;
            if (Double.isNaN(nodes[middle])) {
                return Double.NaN;
            }
            if (nodes[middle] <= wanted) {
                below = middle;
            } else {
                above = middle;
            }
        }
        double x = 1 / node(cold, hot, below);
        double slope = (nodes[above] - nodes[below]) / (1 / node(cold, hot, above) - x);
        x += (wanted - nodes[below]) / slope;
        for (int i = 0; i < REFINEMENTS; i++) {
            x += (wanted - curve.at(x)) / slope;
        }
        return 1 / x;
    }

    /** @return vapour pressure (Pa) at a temperature (K); not a number where the curve has none */
    double at(double temperature) {
        return temperature >= cold && temperature <= hot ? Math.exp(curve.at(1 / temperature)) : Double.NaN;
    }
}
