package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropOutput.DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ENTHALPY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ISOCHORIC_HEAT_CAPACITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_TEMPERATURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.TEMPERATURE;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.Phase;

/**
 * State at a pressure and an enthalpy or entropy by Newton's method ({@link FlashStep}) from a nearby state. Each step costs one evaluation of the equation (2 to 3 µs) and two or three steps
 * suffice from point to point of a channel, against 50 to 150 µs of CoolProp's search from nothing.
 *
 * <p>Gives up, and says so, rather than leave the single phase: a stable single-phase state with that pressure and
 * enthalpy is the only one. Not thread-safe.
 */
final class WarmFlash {

    static final int MAXIMUM_STEPS = 10;
    static final double CONVERGED = 1e-10;
    private static final double POLISHED = 1e-12;
    private static final double POLISHABLE = 1e-3;

    /** Steps from a state this near take the slopes of that state (-). */
    private static final double NEAR = 1e-4;

    /** A step leaves about itself times the way from where its slopes were taken: this little is nothing (-). */
    private static final double NOTHING = 1e-14;

    static final double LARGEST_DENSITY_STEP = 0.3;
    static final double LARGEST_TEMPERATURE_STEP = 0.2;

    private final CoolPropHandle handle;
    private final FlashStep step = new FlashStep();
    private final Slopes slopes = new Slopes();
    private int evaluations;

    WarmFlash(CoolPropHandle handle) {
        this.handle = handle;
    }

    /** @return evaluations of the equation of state since the start */
    int evaluations() {
        return evaluations;
    }

    /**
     * Moves the handle from the single-phase state at which it stands to the wanted one, if Newton's method finds that
     * within a few steps.
     *
     * @param pressure wanted pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its wanted value (J/kg or J/(kg·K))
     * @return whether the handle is at the wanted state; otherwise it is anywhere
     */
    boolean move(double pressure, CoolPropOutput second, double wanted) {
        return move(pressure, second, wanted, CONVERGED, LARGEST_DENSITY_STEP, LARGEST_TEMPERATURE_STEP);
    }

    /**
     * As {@link #arrive(double, CoolPropOutput, double)}, from the nearest anchor.
     *
     * @param anchors anchors of the fluid
     * @param pressure wanted pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its wanted value (J/kg or J/(kg·K))
     * @return whether that succeeded; otherwise the handle is anywhere
     */
    boolean arrive(FlashAnchors anchors, double pressure, CoolPropOutput second, double wanted) {
        if (!anchors.moveTowards(handle, step, pressure, second, wanted)) {
            return false;
        }
        evaluations++;
        return CoolPropPhases.of(handle) != Phase.TWO_PHASE && arrive(pressure, second, wanted);
    }

    /**
     * As {@link #move}, to the last digits, so that the answer does not depend on where the search started.
     *
     * @param pressure wanted pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its wanted value (J/kg or J/(kg·K))
     * @return whether that succeeded; otherwise the handle is anywhere
     */
    boolean arrive(double pressure, CoolPropOutput second, double wanted) {
        return move(pressure, second, wanted, POLISHED, LARGEST_DENSITY_STEP, LARGEST_TEMPERATURE_STEP);
    }

    /**
     * Takes the last digits off a state that CoolProp's own search has found, which stops at about 1e-8 in pressure and
     * enthalpy: one or two steps.
     *
     * @param pressure wanted pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its wanted value (J/kg or J/(kg·K))
     * @return whether that succeeded; otherwise the handle is anywhere
     */
    boolean polish(double pressure, CoolPropOutput second, double wanted) {
        return move(pressure, second, wanted, POLISHED, POLISHABLE, POLISHABLE);
    }

    private boolean move(
            double pressure,
            CoolPropOutput second,
            double wanted,
            double converged,
            double largestDensityStep,
            double largestTemperatureStep) {
        try {
            double rho = handle.output(DENSITY);
            double t = handle.output(TEMPERATURE);
            double away = Double.POSITIVE_INFINITY;
            for (int steps = 0; steps < MAXIMUM_STEPS; steps++) {
                if (away > NEAR) {
                    slopes.read(handle, rho, t);
                    away = 0;
                }
                step.solve(
                        slopes.rho,
                        slopes.t,
                        slopes.pressureByDensity,
                        slopes.pressureByTemperature,
                        slopes.cv,
                        pressure - handle.output(PRESSURE),
                        second == ENTHALPY,
                        wanted - handle.output(second));
                if (step.size() < converged) {
                    return true;
                }
                if (!(Math.abs(step.density()) < largestDensityStep * rho
                        && Math.abs(step.temperature()) < largestTemperatureStep * t)) {
                    return false;
                }
                away = Math.max(away, step.size());
                boolean last = away * step.size() < NOTHING;
                rho += step.density();
                t += step.temperature();
                handle.update(CoolPropInputs.DENSITY_TEMPERATURE, rho, t);
                evaluations++;
                if (CoolPropPhases.of(handle) == Phase.TWO_PHASE) {
                    return false;
                }
                if (last) {
                    return true;
                }
            }
            return false;
        } catch (PropertyFailure e) {
            return false;
        }
    }

    /** Slopes of the equation at one state. */
    private static final class Slopes {

        private double rho;
        private double t;
        private double pressureByDensity;
        private double pressureByTemperature;
        private double cv;

        void read(CoolPropHandle handle, double density, double temperature) {
            rho = density;
            t = temperature;
            pressureByDensity = handle.output(PRESSURE_BY_DENSITY);
            pressureByTemperature = handle.output(PRESSURE_BY_TEMPERATURE);
            cv = handle.output(ISOCHORIC_HEAT_CAPACITY);
        }
    }
}
