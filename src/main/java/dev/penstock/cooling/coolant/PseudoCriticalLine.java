package dev.penstock.cooling.coolant;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;

/**
 * Temperature at which cp peaks along an isobar above the critical pressure, tabulated once per fluid. Below the critical
 * pressure the critical temperature is given. Immutable.
 */
public final class PseudoCriticalLine {

    private static final int NODES = 9;
    private static final double HIGHEST_PRESSURE_RATIO = 16;
    private static final double HIGHEST_TEMPERATURE_RATIO = 2.2;
    private static final int SCAN = 40;

    private final double criticalPressure;
    private final double criticalTemperature;
    private final double[] temperatures;

    private PseudoCriticalLine(double criticalPressure, double criticalTemperature, double[] temperatures) {
        this.criticalPressure = criticalPressure;
        this.criticalTemperature = criticalTemperature;
        this.temperatures = temperatures;
    }

    /**
     * @param fluid fluid
     * @return its line; one that is at infinity if the model has no critical point
     */
    static PseudoCriticalLine of(Fluid fluid) {
        if (fluid.criticalPressure().isEmpty() || fluid.criticalTemperature().isEmpty()) {
            return new PseudoCriticalLine(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, new double[0]);
        }
        double pc = fluid.criticalPressure().getAsDouble();
        double tc = fluid.criticalTemperature().getAsDouble();
        double[] line = new double[NODES];
        line[0] = tc;
        try (FluidCursor cursor = fluid.cursor()) {
            for (int i = 1; i < NODES; i++) {
                double ratio = Math.pow(HIGHEST_PRESSURE_RATIO, i / (NODES - 1.0));
                double pressure = Math.min(ratio * pc, fluid.range().maximumPressure());
                line[i] = peak(cursor, pressure, line[i - 1], HIGHEST_TEMPERATURE_RATIO * tc, fluid);
            }
        }
        return new PseudoCriticalLine(pc, tc, line);
    }

    private static double peak(FluidCursor cursor, double pressure, double from, double to, Fluid fluid) {
        double best = from;
        double highest = 0;
        double last = Math.min(to, fluid.range().maximumTemperature());
        for (int k = 0; k <= SCAN; k++) {
            double temperature = from + (last - from) * k / SCAN;
            try {
                cursor.setPressureTemperature(pressure, temperature);
                double cp = cursor.isobaricHeatCapacity();
                if (cp > highest) {
                    highest = cp;
                    best = temperature;
                }
            } catch (PropertyFailure e) {
                break;
            }
        }
        return best;
    }

    /** @return critical pressure (Pa); infinite without a critical point */
    public double criticalPressure() {
        return criticalPressure;
    }

    /**
     * @param pressure pressure (Pa)
     * @return pseudo-critical temperature (K); infinite without a critical point
     */
    public double at(double pressure) {
        if (!(pressure > criticalPressure)) {
            return criticalTemperature;
        }
        double place = Math.log(pressure / criticalPressure) / Math.log(HIGHEST_PRESSURE_RATIO) * (NODES - 1);
        int i = (int) Math.min(NODES - 2.0, Math.floor(place));
        double fraction = Math.min(1, place - i);
        return temperatures[i] + fraction * (temperatures[i + 1] - temperatures[i]);
    }
}
