package dev.penstock.cooling.coolant;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import java.util.Arrays;
import java.util.Optional;

/**
 * The liquid's side of the boiling line of a fluid whose model has no vapour: straight lines over the logarithm of pressure
 * between nodes. Such a model may end well below the critical point; the line is carried on to it, ln p straight over 1/T, enthalpy
 * with constant cp, the rest constant. Immutable.
 */
final class StraightSaturation implements SaturationColumns {

    private static final int NODES = 80;
    private static final int EXTENSION = 20;
    private static final double HIGHEST_REDUCED_TEMPERATURE = 0.9990;

    private final double[] logPressure;
    private final double[][] values;

    private StraightSaturation(double[] logPressure, double[][] values) {
        this.logPressure = logPressure;
        this.values = values;
    }

    /**
     * @param fluid fluid
     * @return its boiling line; empty if the model has none
     */
    static Optional<SaturationColumns> of(Fluid fluid) {
        double critical = fluid.criticalTemperature().orElse(fluid.range().maximumTemperature());
        double low = fluid.range().minimumTemperature() * 1.0005;
        double high =
                Math.min(critical * HIGHEST_REDUCED_TEMPERATURE, fluid.range().maximumTemperature());
        double[] pressures = new double[NODES];
        double[][] table = new double[NODES][];
        int used = 0;
        for (int i = 0; i < NODES; i++) {
            double fraction = i / (NODES - 1.0);
            double temperature = high - (high - low) * (1 - fraction) * (1 - fraction);
            try {
                double pressure = fluid.vapourPressure(temperature);
                if (used > 0 && !(Math.log(pressure) > pressures[used - 1])) {
                    continue;
                }
                table[used] = SaturationColumns.row(temperature, fluid.saturatedLiquid(temperature), Optional.empty());
                pressures[used++] = Math.log(pressure);
            } catch (PropertyFailure e) {
                // a node outside the model's range is left out; the line is made of the others
                continue;
            }
        }
        return used < 2 ? Optional.empty() : Optional.of(extended(fluid, pressures, table, used));
    }

    private static StraightSaturation extended(Fluid fluid, double[] pressures, double[][] table, int used) {
        double[] last = table[used - 1];
        double critical = fluid.criticalTemperature().orElse(last[TEMPERATURE]);
        double[] kept = Arrays.copyOf(pressures, used);
        double[][] rows = Arrays.copyOf(table, used);
        if (fluid.criticalPressure().isEmpty() || critical < last[TEMPERATURE] * 1.01) {
            return new StraightSaturation(kept, rows);
        }
        double top = Math.log(0.99 * fluid.criticalPressure().getAsDouble());
        if (!(top > kept[used - 1])) {
            return new StraightSaturation(kept, rows);
        }
        kept = Arrays.copyOf(kept, used + EXTENSION);
        rows = Arrays.copyOf(rows, used + EXTENSION);
        double slope = (top - kept[used - 1]) / (1 / last[TEMPERATURE] - 1 / critical);
        for (int i = 0; i < EXTENSION; i++) {
            double[] row = last.clone();
            row[TEMPERATURE] = last[TEMPERATURE] + (critical - last[TEMPERATURE]) * (i + 1) / EXTENSION;
            row[ENTHALPY] = last[ENTHALPY] + last[HEAT_CAPACITY] * (row[TEMPERATURE] - last[TEMPERATURE]);
            rows[used + i] = row;
            kept[used + i] = kept[used - 1] + slope * (1 / last[TEMPERATURE] - 1 / row[TEMPERATURE]);
        }
        return new StraightSaturation(kept, rows);
    }

    @Override
    public double highestPressure() {
        return Math.exp(logPressure[logPressure.length - 1]);
    }

    @Override
    public boolean hasVapour() {
        return false;
    }

    @Override
    public double place(double pressure) {
        return Math.log(pressure);
    }

    @Override
    public double atPlace(double x, int column) {
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
}
