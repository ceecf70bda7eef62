package dev.penstock.cooling;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.Fluid;
import dev.penstock.fluids.FluidCursor;
import dev.penstock.provenance.ModelCard;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A fluid's properties on a grid of pressure and temperature, filled node by node as a march needs them, and read back by
 * cubic interpolation over 4 × 4 nodes. Enthalpy is inverted on the same interpolant, so that (p, h) and (p, T) agree. It
 * answers only where all nodes around lie in one phase and away from the critical point; elsewhere the caller asks the
 * fluid itself. Not thread-safe.
 */
final class CoolantTable {

    static final ModelCard CARD = new ModelCard(
            "cooling.coolant-table",
            "Coolant properties from a table of the full equation of state",
            "cubic over 4 x 4 nodes in ln p and T",
            "single-phase, away from the critical point; elsewhere the full equation",
            "0.1 % against the full equation",
            List.of("common practice, no source"));

    private static final double LOG_STEP = 0.06;
    private static final double LOWEST_PRESSURE = 1e4;
    private static final int PROPERTIES = 6;
    private static final int ENTHALPY = 0;
    private static final int DENSITY = 1;
    private static final int HEAT_CAPACITY = 2;
    private static final int VISCOSITY = 3;
    private static final int CONDUCTIVITY = 4;
    private static final int SOUND = 5;
    private static final double FAILED = Double.POSITIVE_INFINITY;

    private final double[] temperatures;
    private final double[][] rows;
    private final double[] boiling;
    private final double criticalPressure;
    private final double criticalTemperature;
    private final double[] pressureWeights = new double[4];
    private final double[] temperatureWeights = new double[4];
    private final double[] enthalpies = new double[4];
    private int row;
    private int column;
    private int filled;

    CoolantTable(Fluid fluid, Optional<SaturationLine> saturation) {
        criticalPressure = fluid.criticalPressure().orElse(Double.POSITIVE_INFINITY);
        criticalTemperature = fluid.criticalTemperature().orElse(Double.POSITIVE_INFINITY);
        temperatures = nodes(
                fluid.range().minimumTemperature() * (1 + 2e-6),
                fluid.range().maximumTemperature() * 0.9999,
                criticalTemperature);
        double highest = Math.max(fluid.range().maximumPressure(), 2 * LOWEST_PRESSURE);
        int count = (int) Math.ceil(Math.log(highest / LOWEST_PRESSURE) / LOG_STEP) + 2;
        rows = new double[count][];
        boiling = new double[count];
        for (int i = 0; i < count; i++) {
            double pressure = pressureOf(i);
            boolean boils = saturation.isPresent()
                    && pressure < criticalPressure
                    && pressure < saturation.get().highestPressure();
            boiling[i] = boils ? saturation.get().temperature(pressure) : Double.POSITIVE_INFINITY;
        }
    }

    /** Close together around and above the critical temperature, in steps of a few percent elsewhere. */
    private static double[] nodes(double low, double high, double critical) {
        double[] list = new double[4000];
        int n = 0;
        double t = low;
        while (t < high && n < list.length - 1) {
            list[n++] = t;
            double reduced = t / critical;
            double step = reduced > 0.8 && reduced < 1.6 ? 0.008 * critical : 0.025 * t;
            t += step;
        }
        list[n++] = high;
        return Arrays.copyOf(list, n);
    }

    private static double pressureOf(int index) {
        return LOWEST_PRESSURE * Math.exp(index * LOG_STEP);
    }

    /** @return nodes computed so far */
    int filled() {
        return filled;
    }

    /**
     * Reads bulk properties at a pressure and enthalpy.
     *
     * @param pressure pressure (Pa)
     * @param enthalpy enthalpy (J/kg)
     * @param guess temperature to start from (K)
     * @param cursor the fluid, to fill nodes
     * @param flow receives the bulk properties
     * @return whether the table could answer
     */
    boolean bulk(double pressure, double enthalpy, double guess, FluidCursor cursor, ChannelFlow flow) {
        if (!placePressure(pressure)) {
            return false;
        }
        int j = cellOf(guess);
        for (int moves = 0; moves < temperatures.length; moves++) {
            if (!placeColumn(j, pressure, cursor)) {
                return false;
            }
            for (int i = 0; i < 4; i++) {
                enthalpies[i] = alongPressure(column + i, ENTHALPY);
            }
            int inside = j - column;
            if (enthalpy < enthalpies[inside]) {
                j--;
            } else if (enthalpy > enthalpies[inside + 1]) {
                j++;
            } else {
                double temperature = invert(j, enthalpy);
                weights(temperature);
                flow.bulkTemperature = temperature;
                flow.bulkDensity = value(DENSITY);
                flow.bulkHeatCapacity = value(HEAT_CAPACITY);
                flow.bulkViscosity = value(VISCOSITY);
                flow.bulkConductivity = value(CONDUCTIVITY);
                flow.bulkSoundSpeed = value(SOUND);
                return true;
            }
            if (j < 0 || j > temperatures.length - 2) {
                return false;
            }
        }
        return false;
    }

    /**
     * Places the table at a pressure and temperature; the getters then answer.
     *
     * @param pressure pressure (Pa)
     * @param temperature temperature (K)
     * @param cursor the fluid, to fill nodes
     * @return whether the table can answer
     */
    boolean place(double pressure, double temperature, FluidCursor cursor) {
        if (!placePressure(pressure) || !placeColumn(cellOf(temperature), pressure, cursor)) {
            return false;
        }
        weights(temperature);
        return true;
    }

    double enthalpy() {
        return value(ENTHALPY);
    }

    double density() {
        return value(DENSITY);
    }

    double heatCapacity() {
        return value(HEAT_CAPACITY);
    }

    double viscosity() {
        return value(VISCOSITY);
    }

    double conductivity() {
        return value(CONDUCTIVITY);
    }

    private boolean placePressure(double pressure) {
        double place = Math.log(pressure / LOWEST_PRESSURE) / LOG_STEP;
        row = (int) Math.floor(place) - 1;
        if (row < 0 || row + 3 >= rows.length) {
            return false;
        }
        cubic(place - (row + 1), pressureWeights);
        return true;
    }

    /** Lagrange weights of four equidistant nodes at −1, 0, 1, 2. */
    private static void cubic(double u, double[] weights) {
        weights[0] = -u * (u - 1) * (u - 2) / 6;
        weights[1] = (u + 1) * (u - 1) * (u - 2) / 2;
        weights[2] = -(u + 1) * u * (u - 2) / 2;
        weights[3] = (u + 1) * u * (u - 1) / 6;
    }

    private int cellOf(double temperature) {
        int i = Arrays.binarySearch(temperatures, temperature);
        int cell = i >= 0 ? i : -i - 2;
        return Math.max(0, Math.min(temperatures.length - 2, cell));
    }

    private boolean placeColumn(int cell, double pressure, FluidCursor cursor) {
        if (cell < 0 || cell > temperatures.length - 2) {
            return false;
        }
        column = Math.max(0, Math.min(temperatures.length - 4, cell - 1));
        double low = temperatures[column];
        double high = temperatures[column + 3];
        if (nearCritical(pressure, low, high)) {
            return false;
        }
        for (int i = row; i < row + 4; i++) {
            if (low < boiling[i] != high < boiling[i] || (low < boiling[i]) != (low < boiling[row + 1])) {
                return false;
            }
            for (int j = column; j < column + 4; j++) {
                if (!fill(i, j, cursor)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean nearCritical(double pressure, double low, double high) {
        double reduced = pressure / criticalPressure;
        return reduced > 0.75 && reduced < 1.35 && high > 0.9 * criticalTemperature && low < 1.12 * criticalTemperature;
    }

    private boolean fill(int i, int j, FluidCursor cursor) {
        double[] values = rows[i];
        if (values == null) {
            values = new double[temperatures.length * PROPERTIES];
            Arrays.fill(values, Double.NaN);
            rows[i] = values;
        }
        int at = j * PROPERTIES;
        if (Double.isNaN(values[at])) {
            filled++;
            try {
                cursor.setPressureTemperature(pressureOf(i), temperatures[j]);
                values[at + DENSITY] = cursor.density();
                values[at + HEAT_CAPACITY] = cursor.isobaricHeatCapacity();
                values[at + VISCOSITY] = cursor.viscosity();
                values[at + CONDUCTIVITY] = cursor.conductivity();
                values[at + SOUND] = cursor.soundSpeed();
                values[at] = cursor.enthalpy();
            } catch (PropertyFailure e) {
                values[at] = FAILED;
            }
        }
        return values[at] != FAILED;
    }

    private double alongPressure(int j, int property) {
        int at = j * PROPERTIES + property;
        return pressureWeights[0] * rows[row][at]
                + pressureWeights[1] * rows[row + 1][at]
                + pressureWeights[2] * rows[row + 2][at]
                + pressureWeights[3] * rows[row + 3][at];
    }

    /** Lagrange weights of the four temperature nodes of the placed column. */
    private void weights(double temperature) {
        for (int i = 0; i < 4; i++) {
            double w = 1;
            for (int k = 0; k < 4; k++) {
                if (k != i) {
                    w *= (temperature - temperatures[column + k])
                            / (temperatures[column + i] - temperatures[column + k]);
                }
            }
            temperatureWeights[i] = w;
        }
    }

    private double value(int property) {
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum += temperatureWeights[i] * alongPressure(column + i, property);
        }
        return sum;
    }

    /** Temperature in a cell at an enthalpy between those of its ends: regula falsi on the cubic, Illinois variant. */
    private double invert(int cell, double enthalpy) {
        double a = temperatures[cell];
        double b = temperatures[cell + 1];
        double fa = enthalpies[cell - column] - enthalpy;
        double fb = enthalpies[cell + 1 - column] - enthalpy;
        if (fa == 0) {
            return a;
        }
        double t = b;
        for (int i = 0; i < 60 && fb != 0; i++) {
            double next = b - fb * (b - a) / (fb - fa);
            if (Math.abs(next - t) < 1e-13 * t) {
                return next;
            }
            t = next;
            weights(t);
            double f = -enthalpy;
            for (int k = 0; k < 4; k++) {
                f += temperatureWeights[k] * enthalpies[k];
            }
            if (f * fb < 0) {
                a = b;
                fa = fb;
            } else {
                fa *= 0.5;
            }
            b = t;
            fb = f;
        }
        return b;
    }
}
