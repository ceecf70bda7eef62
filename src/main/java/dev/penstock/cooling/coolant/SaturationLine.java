package dev.penstock.cooling.coolant;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import java.util.Arrays;
import java.util.Optional;

/**
 * Both sides of a fluid's boiling line over pressure, tabulated once so that a march can cross it without asking the
 * fluid. Straight lines over the logarithm of pressure between nodes. A fluid whose model has no vapour gets a line
 * without that side. Immutable.
 */
public final class SaturationLine {

    private static final int NODES = 80;
    private static final int EXTENSION = 20;
    private static final double HIGHEST_REDUCED_TEMPERATURE = 0.9990;
    private static final double STEP_INTO_VAPOUR = 1e-5;

    /** Columns: T, then h, rho, cp, mu, k of the liquid, then the same of the vapour. */
    private static final int COLUMNS = 11;

    private final double[] logPressure;
    private final double[][] values;
    private final boolean vapour;

    private SaturationLine(double[] logPressure, double[][] values, boolean vapour) {
        this.logPressure = logPressure;
        this.values = values;
        this.vapour = vapour;
    }

    /**
     * @param fluid fluid
     * @return its boiling line; empty if the model has none
     */
    static Optional<SaturationLine> of(Fluid fluid) {
        double critical = fluid.criticalTemperature().orElse(fluid.range().maximumTemperature());
        double low = fluid.range().minimumTemperature() * 1.0005;
        double high =
                Math.min(critical * HIGHEST_REDUCED_TEMPERATURE, fluid.range().maximumTemperature());
        double[] pressures = new double[NODES];
        double[][] table = new double[NODES][COLUMNS];
        boolean[] withVapour = new boolean[NODES];
        int used = 0;
        int vapours = 0;
        for (int i = 0; i < NODES; i++) {
            double fraction = i / (NODES - 1.0);
            double temperature = high - (high - low) * (1 - fraction) * (1 - fraction);
            try {
                double pressure = fluid.vapourPressure(temperature);
                if (used > 0 && !(Math.log(pressure) > pressures[used - 1])) {
                    continue;
                }
                double[] row = table[used];
                row[0] = temperature;
                fill(row, 1, fluid.saturatedLiquid(temperature));
                withVapour[used] = fillVapour(row, fluid, pressure, temperature);
                vapours += withVapour[used] ? 1 : 0;
                pressures[used++] = Math.log(pressure);
            } catch (PropertyFailure e) {
                // a node outside the model's range is left out; the line is made of the others
                continue;
            }
        }
        if (used < 2) {
            return Optional.empty();
        }
        return Optional.of(
                vapours < NODES / 2
                        ? extended(fluid, pressures, table, used)
                        : onlyWithVapour(pressures, table, withVapour, used, vapours));
    }

    /**
     * A model of the liquid may end well below the critical point. The line is carried on to it: ln p straight over 1/T,
     * enthalpy with constant cp, the rest constant.
     */
    private static SaturationLine extended(Fluid fluid, double[] pressures, double[][] table, int used) {
        double[] last = table[used - 1];
        double critical = fluid.criticalTemperature().orElse(last[0]);
        double[] kept = Arrays.copyOf(pressures, used);
        double[][] rows = Arrays.copyOf(table, used);
        if (fluid.criticalPressure().isEmpty() || critical < last[0] * 1.01) {
            return new SaturationLine(kept, rows, false);
        }
        double top = Math.log(0.99 * fluid.criticalPressure().getAsDouble());
        if (!(top > kept[used - 1])) {
            return new SaturationLine(kept, rows, false);
        }
        kept = Arrays.copyOf(kept, used + EXTENSION);
        rows = Arrays.copyOf(rows, used + EXTENSION);
        double slope = (top - kept[used - 1]) / (1 / last[0] - 1 / critical);
        for (int i = 0; i < EXTENSION; i++) {
            double[] row = last.clone();
            row[0] = last[0] + (critical - last[0]) * (i + 1) / EXTENSION;
            row[1] = last[1] + last[3] * (row[0] - last[0]);
            rows[used + i] = row;
            kept[used + i] = kept[used - 1] + slope * (1 / last[0] - 1 / row[0]);
        }
        return new SaturationLine(kept, rows, false);
    }

    /** A model with vapour may lack it at single nodes, mostly cold ones; the line is then made of the others. */
    private static SaturationLine onlyWithVapour(
            double[] pressures, double[][] table, boolean[] withVapour, int used, int vapours) {
        double[] kept = new double[vapours];
        double[][] rows = new double[vapours][];
        int n = 0;
        for (int i = 0; i < used; i++) {
            if (withVapour[i]) {
                kept[n] = pressures[i];
                rows[n++] = table[i];
            }
        }
        return new SaturationLine(kept, rows, true);
    }

    private static boolean fillVapour(double[] row, Fluid fluid, double pressure, double temperature) {
        try {
            FluidState state = fluid.atPressureTemperature(pressure, temperature * (1 + STEP_INTO_VAPOUR));
            fill(row, 6, state);
            return state.density() < 0.9 * row[2] && state.enthalpy() > row[1];
        } catch (PropertyFailure e) {
            return false;
        }
    }

    private static void fill(double[] row, int at, FluidState state) {
        row[at] = state.enthalpy();
        row[at + 1] = state.density();
        row[at + 2] = state.isobaricHeatCapacity();
        row[at + 3] = state.viscosity();
        row[at + 4] = state.conductivity();
    }

    /** @return whether the vapour side is known */
    public boolean hasVapour() {
        return vapour;
    }

    /** @return highest pressure of the table, a little below the critical one (Pa) */
    double highestPressure() {
        return Math.exp(logPressure[logPressure.length - 1]);
    }

    private double column(double pressure, int column) {
        double x = Math.log(pressure);
        int last = logPressure.length - 1;
        if (x <= logPressure[0]) {
            return values[0][column];
        }
        if (x >= logPressure[last]) {
            return values[last][column];
        }
        int i = Arrays.binarySearch(logPressure, x);
        int b = i >= 0 ? Math.max(1, i) : -i - 1;
        double fraction = (x - logPressure[b - 1]) / (logPressure[b] - logPressure[b - 1]);
        return values[b - 1][column] + fraction * (values[b][column] - values[b - 1][column]);
    }

    public double temperature(double pressure) {
        return column(pressure, 0);
    }

    public double liquidEnthalpy(double pressure) {
        return column(pressure, 1);
    }

    /** Enthalpy of the liquid a fraction of the boiling temperature below boiling (J/kg). */
    double enthalpyBelowBoiling(double pressure, double fraction) {
        return column(pressure, 1) - 2 * fraction * column(pressure, 3) * column(pressure, 0);
    }

    public double vapourEnthalpy(double pressure) {
        return column(pressure, 6);
    }

    public double liquidDensity(double pressure) {
        return column(pressure, 2);
    }

    public double vapourDensity(double pressure) {
        return column(pressure, 7);
    }

    /** Saturated liquid's and vapour's value blended by quality: cp 0, viscosity 1, conductivity 2. */
    public double blend(double pressure, int property, double quality) {
        double liquid = column(pressure, 3 + property);
        if (quality <= 0) {
            return liquid;
        }
        double gas = column(pressure, 8 + property);
        return property == 1 ? 1 / (quality / gas + (1 - quality) / liquid) : liquid + quality * (gas - liquid);
    }
}
