package dev.penstock.fluids.coolprop;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.FluidRange;

/**
 * Known single-phase states over a fluid's range, from which Newton's method ({@link WarmFlash}) reaches most states by
 * pressure and enthalpy or entropy in four or five evaluations, a fifth of the time of a search from nothing. The anchors are
 * the same whatever was asked before, and so are the answers. Immutable.
 */
final class FlashAnchors {

    private static final double LOWEST_PRESSURE = 5e4;
    private static final double HIGHEST_PRESSURE = 1e8;
    private static final int PRESSURES = 20;
    private static final int TEMPERATURES = 30;
    private static final double INSIDE = 1e-3;

    private final double logLow;
    private final double logStep;
    private final int[] count = new int[PRESSURES];
    private final double[][] density = new double[PRESSURES][TEMPERATURES];
    private final double[][] temperature = new double[PRESSURES][TEMPERATURES];
    private final double[][] enthalpy = new double[PRESSURES][TEMPERATURES];
    private final double[][] entropy = new double[PRESSURES][TEMPERATURES];

    /**
     * @param handle a state of the fluid, left anywhere
     * @param range range of its equation
     */
    FlashAnchors(CoolPropHandle handle, FluidRange range) {
        double high = Math.max(2 * LOWEST_PRESSURE, Math.min(HIGHEST_PRESSURE, range.maximumPressure()));
        logLow = Math.log(LOWEST_PRESSURE);
        logStep = Math.log(high / LOWEST_PRESSURE) / (PRESSURES - 1);
        double cold = range.minimumTemperature() * (1 + INSIDE);
        double hot = range.maximumTemperature() * (1 - INSIDE);
        double[] pressures = new double[PRESSURES * TEMPERATURES];
        double[] temperatures = new double[PRESSURES * TEMPERATURES];
        for (int i = 0; i < PRESSURES; i++) {
            double pressure = Math.exp(logLow + i * logStep);
            for (int j = 0; j < TEMPERATURES; j++) {
                pressures[i * TEMPERATURES + j] = pressure;
                temperatures[i * TEMPERATURES + j] = cold * Math.pow(hot / cold, j / (TEMPERATURES - 1.0));
            }
        }
        double[] values = handle.evaluate(
                CoolPropInputs.PRESSURE_TEMPERATURE,
                pressures,
                temperatures,
                CoolPropOutput.DENSITY,
                CoolPropOutput.ENTHALPY,
                CoolPropOutput.ENTROPY);
        for (int k = 0; k < pressures.length; k++) {
            add(k / TEMPERATURES, temperatures[k], values[3 * k], values[3 * k + 1], values[3 * k + 2]);
        }
    }

    /** Frozen states, and those on the saturation curve, are not numbers: the row is made of the others. */
    private void add(int row, double t, double rho, double h, double s) {
        if (Double.isNaN(rho)) {
            return;
        }
        int place = count[row]++;
        density[row][place] = rho;
        temperature[row][place] = t;
        enthalpy[row][place] = h;
        entropy[row][place] = s;
    }

    /**
     * Moves a handle to the anchor nearest to a state.
     *
     * @param handle state of the fluid
     * @param pressure pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its value (J/kg or J/(kg·K))
     * @return whether there is one; the handle is then there
     */
    boolean moveNear(CoolPropHandle handle, double pressure, CoolPropOutput second, double wanted) {
        int nearest = nearest(pressure, second, wanted);
        if (nearest < 0) {
            return false;
        }
        try {
            handle.update(CoolPropInputs.DENSITY_TEMPERATURE, density(nearest), temperature(nearest));
            return true;
        } catch (PropertyFailure e) {
            return false;
        }
    }

    /**
     * @param pressure pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its value (J/kg or J/(kg·K))
     * @return number of the anchor nearest to that state, negative if there is none
     */
    int nearest(double pressure, CoolPropOutput second, double wanted) {
        long row = Math.round((Math.log(pressure) - logLow) / logStep);
        if (!(row >= 0 && row < PRESSURES) || count[(int) row] == 0) {
            return -1;
        }
        int i = (int) row;
        double[] values = second == CoolPropOutput.ENTHALPY ? enthalpy[i] : entropy[i];
        int low = 0;
        int high = count[i] - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (values[middle] <= wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return i * TEMPERATURES + (wanted - values[low] < values[high] - wanted ? low : high);
    }

    /** @return density of an anchor (kg/m³) */
    double density(int anchor) {
        return density[anchor / TEMPERATURES][anchor % TEMPERATURES];
    }

    /** @return temperature of an anchor (K) */
    double temperature(int anchor) {
        return temperature[anchor / TEMPERATURES][anchor % TEMPERATURES];
    }
}
