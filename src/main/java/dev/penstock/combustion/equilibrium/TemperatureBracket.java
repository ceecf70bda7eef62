package dev.penstock.combustion.equilibrium;

/**
 * Last resort for assigned enthalpy or entropy: both rise with temperature at equilibrium, so the temperature is bracketed
 * and halved in, with an equilibrium at assigned temperature at each trial. Slow and sure.
 *
 * <p>A condensed species is taken to exist up to the end of its data. Where much of it would vanish at that temperature,
 * enthalpy and entropy jump there, and no equilibrium has a value within the jump. Such a value is then met at that
 * temperature by as much of the condensed species as it takes, the gas staying somewhat supersaturated.
 */
final class TemperatureBracket {

    private static final double HIGHEST = 9000;
    private static final double LOWEST = 100;
    private static final double FACTOR = 0.75;
    private static final int HALVINGS = 100;
    /** Newton on the problem itself is tried at every third halving up to this one. */
    private static final int DIRECT_LAST = 10;

    private static final int DIRECT_EVERY = 3;
    private static final double NARROW = 1e-13;
    private static final double CLOSE = 1e-10;

    /** What came of it. */
    enum Outcome {
        SOLVED,
        FAILED,
        /** Even at 100 K the mixture has more enthalpy or entropy than wanted. */
        TOO_COLD
    }

    /** Equilibrium from the state left by the last one. */
    interface Attempt {
        boolean atTemperature(double temperature, double pressure);

        boolean directly(Assigned assigned, double target, double pressure);

        /** At assigned temperature, leaving the set of condensed species as it is. */
        boolean withPresentPhases(double temperature, double pressure);
    }

    private final Attempt attempt;
    private final GibbsState state;

    TemperatureBracket(Attempt attempt, GibbsState state) {
        this.attempt = attempt;
        this.state = state;
    }

    /** If solved, the solution is the state. */
    Outcome solve(Assigned assigned, double target, double pressure) {
        if (assigned == Assigned.TEMPERATURE) {
            return descend(target, pressure) ? Outcome.SOLVED : Outcome.FAILED;
        }
        double high = HIGHEST;
        state.start(high);
        if (!attempt.atTemperature(high, pressure) || excess(assigned, target) < 0) {
            return Outcome.FAILED;
        }
        double low = high;
        do {
            if (low == LOWEST) {
                return Outcome.TOO_COLD;
            }
            high = low;
            low = Math.max(LOWEST, low * FACTOR);
            if (!attempt.atTemperature(low, pressure)) {
                return Outcome.FAILED;
            }
        } while (excess(assigned, target) > 0);
        for (int i = 0; i < HALVINGS && high - low > NARROW * high; i++) {
            double middle = 0.5 * (low + high);
            if (!attempt.atTemperature(middle, pressure)) {
                return Outcome.FAILED;
            }
            if (i % DIRECT_EVERY == 2 && i < DIRECT_LAST) {
                if (attempt.directly(assigned, target, pressure)) {
                    return Outcome.SOLVED;
                }
                if (!attempt.atTemperature(middle, pressure)) {
                    return Outcome.FAILED;
                }
            }
            if (excess(assigned, target) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return close(assigned, target) || withinJump(assigned, target, pressure, low, high)
                ? Outcome.SOLVED
                : Outcome.FAILED;
    }

    private boolean descend(double target, double pressure) {
        double t = HIGHEST;
        state.start(t);
        while (t > target) {
            if (!attempt.atTemperature(t, pressure)) {
                return false;
            }
            t *= FACTOR;
        }
        return attempt.atTemperature(target, pressure);
    }

    private boolean withinJump(Assigned assigned, double target, double pressure, double low, double high) {
        double[] ends = state.species.condensedMaximum;
        for (int c = 0; c < ends.length; c++) {
            if (ends[c] >= low * (1 - NARROW) && ends[c] <= high * (1 + NARROW)) {
                return inJump(c, assigned, target, pressure, ends[c]);
            }
        }
        return false;
    }

    private boolean inJump(int c, Assigned assigned, double target, double pressure, double temperature) {
        state.setActive(c, false);
        if (!attempt.withPresentPhases(temperature, pressure)) {
            return false;
        }
        double high = state.affinity(c);
        double low = 0;
        state.setActive(c, true);
        for (int i = 0; i < HALVINGS && high - low > NARROW; i++) {
            double middle = 0.5 * (low + high);
            state.supersaturation[c] = middle;
            if (!attempt.atTemperature(temperature, pressure)) {
                return false;
            }
            if (excess(assigned, target) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return close(assigned, target);
    }

    private boolean close(Assigned assigned, double target) {
        double scale = state.frozenHeatCapacity() * (assigned == Assigned.ENTHALPY ? state.temperature : 1);
        return Math.abs(excess(assigned, target)) < CLOSE * scale;
    }

    /** Distance from what is wanted; positive where it is too hot. */
    double excess(Assigned assigned, double target) {
        return (assigned == Assigned.ENTHALPY ? state.enthalpy() : state.entropy()) - target;
    }
}
