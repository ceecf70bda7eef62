package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropOutput.DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ENTHALPY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ENTROPY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ISOCHORIC_HEAT_CAPACITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_TEMPERATURE;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.FluidRange;
import java.nio.DoubleBuffer;
import java.util.Arrays;

/**
 * Known single-phase states over a fluid's range, with the slopes that a first step of Newton's method ({@link FlashStep}) takes, so
 * that {@link WarmFlash} reaches most states by pressure and enthalpy or entropy in two evaluations, a tenth of the time of a search
 * from nothing. The anchors are the same whatever was asked before, and so are the answers. Immutable.
 */
final class FlashAnchors {

    /** Format of the numbers in a file. */
    static final int FORMAT = 1;

    private static final double LOWEST_PRESSURE = 5e4;
    private static final double HIGHEST_PRESSURE = 1e8;
    private static final int PRESSURES = 40;
    private static final int TEMPERATURES = 100;
    private static final double INSIDE = 1e-3;
    private static final CoolPropOutput[] KEPT = {
        DENSITY, ENTHALPY, ENTROPY, PRESSURE_BY_DENSITY, PRESSURE_BY_TEMPERATURE, ISOCHORIC_HEAT_CAPACITY
    };

    /** By how much CoolProp may miss a stored density before the anchors are taken for another CoolProp's (-). */
    private static final double SAME = 1e-9;

    private final double logLow;
    private final double logStep;
    private final double cold;
    private final double hot;
    private final int[] count = new int[PRESSURES];
    private final double[] temperature = new double[PRESSURES * TEMPERATURES];
    private final double[][] kept = new double[KEPT.length][PRESSURES * TEMPERATURES];

    private FlashAnchors(double cold, double hot, double high) {
        this.cold = cold;
        this.hot = hot;
        logLow = Math.log(LOWEST_PRESSURE);
        logStep = Math.log(high / LOWEST_PRESSURE) / (PRESSURES - 1);
    }

    /**
     * @param handle a state of the fluid, left anywhere
     * @param range range of its equation
     * @return the anchors as numbers: lowest and highest temperature (K), highest pressure (Pa), then what is kept of each
     */
    static double[] make(CoolPropHandle handle, FluidRange range) {
        double[] numbers = new double[3 + PRESSURES * TEMPERATURES * KEPT.length];
        numbers[0] = range.minimumTemperature() * (1 + INSIDE);
        numbers[1] = range.maximumTemperature() * (1 - INSIDE);
        numbers[2] = Math.max(2 * LOWEST_PRESSURE, Math.min(HIGHEST_PRESSURE, range.maximumPressure()));
        FlashAnchors empty = new FlashAnchors(numbers[0], numbers[1], numbers[2]);
        int[] all = new int[PRESSURES * TEMPERATURES];
        Arrays.setAll(all, k -> k);
        double[] values = empty.evaluate(handle, all);
        System.arraycopy(values, 0, numbers, 3, values.length);
        return numbers;
    }

    private double[] evaluate(CoolPropHandle handle, int... places) {
        double[] pressures = Arrays.stream(places)
                .mapToDouble(k -> pressure(k / TEMPERATURES))
                .toArray();
        double[] temperatures = Arrays.stream(places)
                .mapToDouble(k -> gridTemperature(k % TEMPERATURES))
                .toArray();
        return handle.evaluate(CoolPropInputs.PRESSURE_TEMPERATURE, pressures, temperatures, KEPT);
    }

    private double pressure(int row) {
        return Math.exp(logLow + row * logStep);
    }

    private double gridTemperature(int column) {
        return cold * Math.pow(hot / cold, column / (TEMPERATURES - 1.0));
    }

    /** @return the anchors that were written as numbers */
    static FlashAnchors read(DoubleBuffer numbers) {
        FlashAnchors anchors = new FlashAnchors(numbers.get(), numbers.get(), numbers.get());
        double[] values = new double[KEPT.length];
        for (int k = 0; k < PRESSURES * TEMPERATURES; k++) {
            numbers.get(values);
            anchors.add(k / TEMPERATURES, anchors.gridTemperature(k % TEMPERATURES), values);
        }
        return anchors;
    }

    /** Frozen states, and those on the saturation curve, are not numbers: the row is made of the others. */
    private void add(int row, double t, double[] values) {
        if (Double.isNaN(values[0])) {
            return;
        }
        int place = row * TEMPERATURES + count[row]++;
        temperature[place] = t;
        for (int i = 0; i < values.length; i++) {
            kept[i][place] = values[i];
        }
    }

    /** @return whether the fluid's equation still says what it said when the anchors were made */
    boolean isOf(CoolPropHandle handle) {
        for (int row = 0; row < PRESSURES; row += PRESSURES - 1) {
            int anchor = row * TEMPERATURES + count[row] / 2;
            if (count[row] > 0) {
                double now = handle.evaluate(
                                CoolPropInputs.PRESSURE_TEMPERATURE,
                                new double[] {pressure(row)},
                                new double[] {temperature[anchor]},
                                DENSITY)[0];
                if (!(Math.abs(now - density(anchor)) <= SAME * density(anchor))) {
                    return false;
                }
            }
        }
        return true;
    }

    /**
     * Moves a handle to where a step of Newton's method from the nearest anchor leads.
     *
     * @param handle state of the fluid
     * @param step scratch
     * @param pressure pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its value (J/kg or J/(kg·K))
     * @return whether that is a state near the anchor; otherwise the handle is anywhere
     */
    boolean moveTowards(CoolPropHandle handle, FlashStep step, double pressure, CoolPropOutput second, double wanted) {
        int k = nearest(pressure, second, wanted);
        if (k < 0) {
            return false;
        }
        boolean enthalpy = second == ENTHALPY;
        step.solve(
                kept[0][k],
                temperature[k],
                kept[3][k],
                kept[4][k],
                kept[5][k],
                pressure - pressure(k / TEMPERATURES),
                enthalpy,
                wanted - kept[enthalpy ? 1 : 2][k]);
        boolean near = Math.abs(step.density()) < WarmFlash.LARGEST_DENSITY_STEP * kept[0][k]
                && Math.abs(step.temperature()) < WarmFlash.LARGEST_TEMPERATURE_STEP * temperature[k];
        return near && move(handle, kept[0][k] + step.density(), temperature[k] + step.temperature());
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
        return nearest >= 0 && move(handle, density(nearest), temperature(nearest));
    }

    private static boolean move(CoolPropHandle handle, double density, double temperature) {
        try {
            handle.update(CoolPropInputs.DENSITY_TEMPERATURE, density, temperature);
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
        int start = (int) row * TEMPERATURES;
        double[] values = kept[second == ENTHALPY ? 1 : 2];
        int low = start;
        int high = start + count[(int) row] - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (values[middle] <= wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return wanted - values[low] < values[high] - wanted ? low : high;
    }

    /** @return density of an anchor (kg/m³) */
    double density(int anchor) {
        return kept[0][anchor];
    }

    /** @return temperature of an anchor (K) */
    double temperature(int anchor) {
        return temperature[anchor];
    }
}
