package dev.penstock.combustion.equilibrium;

import dev.penstock.combustion.equilibrium.TemperatureBracket.Outcome;
import java.util.Arrays;

/**
 * Finds an equilibrium: chooses where Newton's method starts and which condensed species take part.
 *
 * <p>A condensed species whose amount comes out negative, or whose data end below the temperature, is taken out; the one
 * with which the gas is supersaturated most is put in; until the set stands. Starts are the last solution, likely
 * products, and a bracket on the temperature, in this order. Not thread-safe.
 */
final class EquilibriumSearch implements TemperatureBracket.Attempt {

    private static final double START_TEMPERATURE = 3800;
    private static final int WARM_LIMIT = 30;
    private static final int COLD_LIMIT = 80;
    private static final int MOST_PHASE_CHANGES = 14;
    private static final int STEPS_BETWEEN_LOOKS = 8;
    /** Residual below which the potentials say which condensed species form. */
    private static final double NEARLY = 0.5;
    /** Steps after which a condensed species is tried all the same. */
    private static final int SLOW = 23;

    private static final double SUPERSATURATION = 1e-9;

    private final GibbsState state;
    private final GibbsNewton newton;
    private final GibbsSlopes slopes;
    private final TemperatureBracket bracket;
    private boolean warm;

    EquilibriumSearch(ActiveSpecies species) {
        state = new GibbsState(species);
        newton = new GibbsNewton(state);
        slopes = new GibbsSlopes(state, newton);
        bracket = new TemperatureBracket(this, state);
    }

    GibbsState state() {
        return state;
    }

    GibbsSlopes slopes() {
        return slopes;
    }

    /** @return Newton steps of the last solution, all attempts together */
    int iterations() {
        return newton.iterations();
    }

    double worstResidual() {
        return newton.worstResidual();
    }

    /** Lets the next solution start afresh. */
    void forget() {
        warm = false;
    }

    /** Keeps the last solution, if the next may start from it. */
    void keep(EquilibriumMark mark) {
        if (warm) {
            mark.take(state);
        } else {
            mark.forget();
        }
    }

    void takeStep() {
        newton.takeStep();
    }

    /** Lets the next solution start from a mark; from where it would start anyway if the mark is of something else. */
    void startFrom(EquilibriumMark mark) {
        if (mark.give(state)) {
            warm = true;
            takeStep();
        }
    }

    /**
     * @param assigned what is given
     * @param target temperature (K), enthalpy (J/kg) or entropy (J/(kg·K))
     * @param pressure pressure (Pa)
     * @return what came of it; if solved, the solution is the state
     */
    Outcome solve(Assigned assigned, double target, double pressure) {
        newton.resetIterations();
        Arrays.fill(state.supersaturation, 0);
        boolean solved = warm && attempt(assigned, target, pressure, WARM_LIMIT);
        if (!solved) {
            if (assigned == Assigned.ENTHALPY) {
                state.startFromEnthalpy(target);
            } else {
                state.start(START_TEMPERATURE);
            }
            solved = attempt(assigned, target, pressure, COLD_LIMIT);
        }
        Outcome outcome = solved ? Outcome.SOLVED : bracket.solve(assigned, target, pressure);
        warm = outcome == Outcome.SOLVED && !state.anySupersaturation();
        return outcome;
    }

    @Override
    public boolean atTemperature(double temperature, double pressure) {
        if (attempt(Assigned.TEMPERATURE, temperature, pressure, COLD_LIMIT)) {
            return true;
        }
        state.start(temperature);
        return attempt(Assigned.TEMPERATURE, temperature, pressure, COLD_LIMIT);
    }

    @Override
    public boolean directly(Assigned assigned, double target, double pressure) {
        return attempt(assigned, target, pressure, WARM_LIMIT);
    }

    @Override
    public boolean withPresentPhases(double temperature, double pressure) {
        state.temperature = temperature;
        return newton.iterate(Assigned.TEMPERATURE, temperature, pressure, COLD_LIMIT);
    }

    private boolean attempt(Assigned assigned, double target, double pressure, int limit) {
        if (assigned == Assigned.TEMPERATURE) {
            state.temperature = target;
        }
        int start = newton.iterations();
        int changes = 0;
        while (changes <= MOST_PHASE_CHANGES) {
            boolean converged = newton.iterate(assigned, target, pressure, STEPS_BETWEEN_LOOKS);
            int steps = newton.iterations() - start;
            if (!converged && (newton.broken() || steps > limit)) {
                return false;
            }
            boolean look = converged || newton.worstResidual() < NEARLY || steps > SLOW;
            if (look && changePhases()) {
                changes++;
            } else if (converged) {
                return true;
            }
        }
        return false;
    }

    /** Takes out the condensed species that fits least or puts in the one that is missed most; false if the set stands. */
    private boolean changePhases() {
        int drop = -1;
        int add = -1;
        double least = 0;
        double most = SUPERSATURATION;
        for (int c = 0; c < state.condensed; c++) {
            boolean allowed = state.temperature <= state.species.condensedMaximum[c];
            if (state.isActive(c)) {
                double amount = allowed ? state.condensedMoles[c] : Double.NEGATIVE_INFINITY;
                if (amount < least) {
                    least = amount;
                    drop = c;
                }
            } else if (allowed && state.affinity(c) > most) {
                most = state.affinity(c);
                add = c;
            }
        }
        if (drop >= 0) {
            state.setActive(drop, false);
        } else if (add >= 0) {
            state.setActive(add, true);
        }
        return drop >= 0 || add >= 0;
    }
}
