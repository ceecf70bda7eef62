package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidCursor;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.KnownStates;

/**
 * Isentropic enthalpy rise of a liquid over pressure from one inlet state, as a Chebyshev interpolant. A cycle's solver asks
 * for it hundreds of times with the same inlet and slightly different pressures; the interpolant answers in well under a
 * microsecond where the equation of state needs tens. With {@value #NODES} nodes over a smooth liquid isentrope the
 * difference is below 1e-9 of the rise (tested against the equation of state).
 */
final class LiquidIsentrope {

    private static final int NODES = 24;
    private static final int MOST_STEPS = 20;

    private final FluidState inlet;
    private final double top;
    private final double[] coefficients = new double[NODES];

    /**
     * @param fluid what is compressed
     * @param inlet state it starts from
     * @param top highest pressure to cover (Pa), above the inlet pressure
     * @throws dev.penstock.errors.PropertyFailure if the isentrope leaves the range of the fluid
     */
    LiquidIsentrope(Fluid fluid, FluidState inlet, double top) {
        this(fluid, inlet, top, new KnownStates());
    }

    /** As above, with states of the fluid that were found lately. */
    LiquidIsentrope(Fluid fluid, FluidState inlet, double top, KnownStates known) {
        this.inlet = inlet;
        this.top = top;
        double[] values = new double[NODES];
        for (int i = NODES - 1; i >= 0; i--) {
            double x = Math.cos(Math.PI * (i + 0.5) / NODES);
            double pressure = inlet.pressure() + 0.5 * (x + 1) * (top - inlet.pressure());
            // divided by the pressure rise, so that the relative error stays small near the inlet
            values[i] = rise(fluid, inlet, pressure, known) / (pressure - inlet.pressure());
        }
        for (int k = 0; k < NODES; k++) {
            double sum = 0;
            for (int i = 0; i < NODES; i++) {
                sum += values[i] * Math.cos(Math.PI * k * (i + 0.5) / NODES);
            }
            coefficients[k] = (k == 0 ? 1.0 : 2.0) / NODES * sum;
        }
    }

    /** @return whether this is the isentrope of that inlet and reaches that pressure */
    boolean covers(FluidState state, double pressure) {
        return pressure <= top && inlet.equals(state);
    }

    /**
     * @param pressure pressure to compress to (Pa), between inlet and top
     * @return isentropic enthalpy rise (J/kg)
     */
    double rise(double pressure) {
        double x = 2 * (pressure - inlet.pressure()) / (top - inlet.pressure()) - 1;
        double b1 = 0;
        double b2 = 0;
        for (int k = NODES - 1; k > 0; k--) {
            double b = 2 * x * b1 - b2 + coefficients[k];
            b2 = b1;
            b1 = b;
        }
        return (x * b1 - b2 + coefficients[0]) * (pressure - inlet.pressure());
    }

    private static double rise(Fluid fluid, FluidState inlet, double pressure, KnownStates known) {
        try {
            return fluid.enthalpyAtPressureEntropy(pressure, inlet.entropy(), known) - inlet.enthalpy();
        } catch (PropertyFailure e) {
            try (FluidCursor cursor = fluid.cursor()) {
                return riseByTemperature(fluid, cursor, inlet, pressure, inlet.temperature());
            }
        }
    }

    /**
     * One point of an isentrope. Where the fluid finds no state by pressure and entropy, as near the critical pressure, by
     * Newton's method on temperature, dT = T ds/cp: liquids answer to pressure and temperature everywhere.
     *
     * @param fluid what is compressed
     * @param cursor its cursor, left at the state found
     * @param inlet state it starts from
     * @param pressure pressure to compress to (Pa)
     * @param guess first guess of the temperature there (K)
     * @return isentropic enthalpy rise (J/kg)
     * @throws NotConverged if the temperature does not settle
     */
    static double rise(Fluid fluid, FluidCursor cursor, FluidState inlet, double pressure, double guess) {
        try {
            cursor.setPressureTemperature(pressure, guess);
            cursor.setPressureEntropy(pressure, inlet.entropy());
            return cursor.enthalpy() - inlet.enthalpy();
        } catch (PropertyFailure e) {
            return riseByTemperature(fluid, cursor, inlet, pressure, guess);
        }
    }

    private static double riseByTemperature(
            Fluid fluid, FluidCursor cursor, FluidState inlet, double pressure, double guess) {
        double temperature = guess;
        double step = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            cursor.setPressureTemperature(pressure, temperature);
            step = (inlet.entropy() - cursor.entropy()) * temperature / cursor.isobaricHeatCapacity();
            if (Math.abs(step) < 1e-7 * temperature) {
                // first order in the step that is left: dh = T ds at constant pressure
                return cursor.enthalpy() + temperature * (inlet.entropy() - cursor.entropy()) - inlet.enthalpy();
            }
            temperature += step;
        }
        throw new NotConverged(
                "isentropic compression of " + fluid.name(),
                MOST_STEPS,
                Math.abs(step / temperature),
                "at " + pressure + " Pa from " + inlet.temperature() + " K");
    }
}
