package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropOutput.DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ENTHALPY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ISOCHORIC_HEAT_CAPACITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_TEMPERATURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.TEMPERATURE;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.fluids.state.Phase;

/**
 * State at a pressure and an enthalpy or entropy by Newton's method ({@link FlashStep}) from a nearby state. Each step costs one
 * evaluation of the equation (2 to 3 µs) and two or three steps suffice from point to point of a channel, against 50 to 150 µs of
 * CoolProp's search from nothing.
 *
 * <p>Gives up, and says so, rather than leave the single phase: a stable single-phase state with that pressure and
 * enthalpy is the only one. Not thread-safe.
 */
final class WarmFlash {

    static final int MAXIMUM_STEPS = 10;
    static final double CONVERGED = 1e-10;
    static final double POLISHED = 1e-12;

    /** So little of the way left that its square is nothing (-). */
    static final double MADE_UP = 1e-7;

    /** A known state further away is none to start from: the anchors are as near (-). */
    private static final double REACH = 0.01;

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
     * Moves the handle from the single-phase state at which it stands to a pressure and a temperature above the critical one, where
     * pressure rises with density throughout: Newton's method in density alone.
     *
     * @param pressure wanted pressure (Pa)
     * @param temperature wanted temperature (K)
     * @return whether the handle is at the wanted state; otherwise it is anywhere
     */
    boolean moveToTemperature(double pressure, double temperature) {
        try {
            double rho = handle.output(DENSITY);
            double warmer = temperature - handle.output(TEMPERATURE);
            double missing = pressure - handle.output(PRESSURE) - handle.output(PRESSURE_BY_TEMPERATURE) * warmer;
            for (int steps = 0; steps < MAXIMUM_STEPS; steps++) {
                double move = missing / handle.output(PRESSURE_BY_DENSITY);
                if (!(Math.abs(move) < LARGEST_DENSITY_STEP * rho)) {
                    return false;
                }
                rho += move;
                handle.update(CoolPropInputs.DENSITY_TEMPERATURE, rho, temperature);
                evaluations++;
                missing = pressure - handle.output(PRESSURE);
                if (Math.abs(missing) < CONVERGED * pressure) {
                    return true;
                }
            }
            return false;
        } catch (PropertyFailure e) {
            return false;
        }
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

    /**
     * Moves the handle to the wanted state from the nearest of some that are known.
     *
     * @param known states of the fluid
     * @param pressure wanted pressure (Pa)
     * @param second {@code ENTHALPY} or {@code ENTROPY}
     * @param wanted its wanted value (J/kg or J/(kg·K))
     * @param converged change of density and temperature that may be left (-)
     * @return whether that succeeded; otherwise the handle is anywhere
     */
    boolean arrive(KnownStates known, double pressure, CoolPropOutput second, double wanted, double converged) {
        KnownStates.Point nearest = null;
        double least = REACH;
        for (int i = 0; i < known.size(); i++) {
            double size = stepFrom(known.get(i), pressure, second, wanted);
            if (size < least) {
                least = size;
                nearest = known.get(i);
            }
        }
        if (nearest == null) {
            return false;
        }
        stepFrom(nearest, pressure, second, wanted);
        slopes.take(nearest);
        double rho = nearest.density() + step.density();
        double t = nearest.temperature() + step.temperature();
        try {
            handle.update(CoolPropInputs.DENSITY_TEMPERATURE, rho, t);
            evaluations++;
            return CoolPropPhases.of(handle) != Phase.TWO_PHASE
                    && moveFrom(
                            rho,
                            t,
                            nearest.slopesAway() + least,
                            pressure,
                            second,
                            wanted,
                            converged,
                            LARGEST_DENSITY_STEP,
                            LARGEST_TEMPERATURE_STEP);
        } catch (PropertyFailure e) {
            return false;
        }
    }

    private double stepFrom(KnownStates.Point from, double pressure, CoolPropOutput second, double wanted) {
        boolean enthalpy = second == ENTHALPY;
        step.solve(
                from.density(),
                from.temperature(),
                from.pressureByDensity(),
                from.pressureByTemperature(),
                from.isochoricHeatCapacity(),
                pressure - from.pressure(),
                enthalpy,
                wanted - (enthalpy ? from.enthalpy() : from.entropy()));
        return step.size();
    }

    /** @return the single-phase state at which the handle stands, with slopes from the end of the last search or read anew */
    KnownStates.Point point(double pressure, double density, double temperature, double enthalpy, double entropy) {
        double away = slopes.away(density, temperature);
        if (!(away <= NEAR)) {
            slopes.read(handle, density, temperature);
            away = 0;
        }
        return new KnownStates.Point(
                pressure,
                density,
                temperature,
                enthalpy,
                entropy,
                slopes.pressureByDensity,
                slopes.pressureByTemperature,
                slopes.cv,
                away);
    }

    private boolean move(
            double pressure,
            CoolPropOutput second,
            double wanted,
            double converged,
            double largestDensityStep,
            double largestTemperatureStep) {
        try {
            return moveFrom(
                    handle.output(DENSITY),
                    handle.output(TEMPERATURE),
                    Double.POSITIVE_INFINITY,
                    pressure,
                    second,
                    wanted,
                    converged,
                    largestDensityStep,
                    largestTemperatureStep);
        } catch (PropertyFailure e) {
            return false;
        }
    }

    /** From the density and temperature at which the handle stands; the slopes were taken so far away. */
    private boolean moveFrom(
            double density,
            double temperature,
            double slopesAway,
            double pressure,
            CoolPropOutput second,
            double wanted,
            double converged,
            double largestDensityStep,
            double largestTemperatureStep) {
        double rho = density;
        double t = temperature;
        double away = slopesAway;
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
    }

    /** Slopes of the equation at one state. */
    private static final class Slopes {

        private double rho;
        private double t;
        private double before;
        private double pressureByDensity;
        private double pressureByTemperature;
        private double cv;

        /** Slopes of a known state, which were taken as far from it as it says. */
        void take(KnownStates.Point point) {
            rho = point.density();
            t = point.temperature();
            pressureByDensity = point.pressureByDensity();
            pressureByTemperature = point.pressureByTemperature();
            cv = point.isochoricHeatCapacity();
            before = point.slopesAway();
        }

        /** How far from a state the slopes were taken (-); not a number before any were. */
        double away(double density, double temperature) {
            return rho > 0
                    ? before + Math.max(Math.abs(density - rho) / rho, Math.abs(temperature - t) / t)
                    : Double.NaN;
        }

        void read(CoolPropHandle handle, double density, double temperature) {
            rho = density;
            t = temperature;
            before = 0;
            pressureByDensity = handle.output(PRESSURE_BY_DENSITY);
            pressureByTemperature = handle.output(PRESSURE_BY_TEMPERATURE);
            cv = handle.output(ISOCHORIC_HEAT_CAPACITY);
        }
    }
}
