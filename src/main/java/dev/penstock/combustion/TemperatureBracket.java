package dev.penstock.combustion;

import dev.penstock.combustion.GibbsNewton.Assigned;

/**
 * Last resort for assigned enthalpy or entropy: both rise with temperature at equilibrium, so the temperature is bracketed
 * and halved in, with an equilibrium at assigned temperature at each trial. Slow and sure.
 */
final class TemperatureBracket {

    private static final double HIGHEST = 9000;
    private static final double LOWEST = 40;
    private static final double FACTOR = 0.75;
    private static final int HALVINGS = 200;

    /** Equilibrium at assigned temperature, from the state left by the last one. */
    @FunctionalInterface
    interface AtTemperature {
        boolean solve(double temperature, double pressure);
    }

    private final AtTemperature inner;
    private final GibbsNewton newton;

    TemperatureBracket(AtTemperature inner, GibbsNewton newton) {
        this.inner = inner;
        this.newton = newton;
    }

    /** @return whether a solution was found; it is then the state of Newton's iteration */
    boolean solve(Assigned assigned, double target, double pressure) {
        if (assigned == Assigned.TEMPERATURE) {
            return descend(target, pressure);
        }
        double high = HIGHEST;
        newton.start(high);
        if (!inner.solve(high, pressure) || excess(assigned, target) < 0) {
            return false;
        }
        double low = high;
        do {
            high = low;
            low *= FACTOR;
            if (low < LOWEST || !inner.solve(low, pressure)) {
                return false;
            }
        } while (excess(assigned, target) > 0);
        for (int i = 0; i < HALVINGS && high - low > 1e-13 * high; i++) {
            double middle = 0.5 * (low + high);
            if (!inner.solve(middle, pressure)) {
                return false;
            }
            if (excess(assigned, target) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return true;
    }

    private boolean descend(double target, double pressure) {
        double t = HIGHEST;
        newton.start(t);
        while (t > target) {
            if (!inner.solve(t, pressure)) {
                return false;
            }
            t *= FACTOR;
        }
        return inner.solve(target, pressure);
    }

    private double excess(Assigned assigned, double target) {
        return (assigned == Assigned.ENTHALPY ? newton.enthalpy() : newton.entropy()) - target;
    }
}
