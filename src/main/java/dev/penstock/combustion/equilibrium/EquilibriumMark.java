package dev.penstock.combustion.equilibrium;

/**
 * Where an {@link EquilibriumSolver} stood, for a later solution nearby to start from: what is found there is the same, in fewer steps.
 * Belongs to whoever made it; another solver, or one whose mixture has other elements, starts as if there were none.
 */
public final class EquilibriumMark {

    private GibbsState owner;
    private double[] logMoles;
    private double[] potentials;
    private double[] condensedMoles;
    private boolean[] active;
    private double logGas;
    private double temperature;

    void take(GibbsState state) {
        if (owner != state) {
            owner = state;
            logMoles = new double[state.gas];
            potentials = new double[state.elements];
            condensedMoles = new double[state.condensed];
            active = new boolean[state.condensed];
        }
        System.arraycopy(state.logMoles, 0, logMoles, 0, logMoles.length);
        System.arraycopy(state.potentials, 0, potentials, 0, potentials.length);
        for (int c = 0; c < active.length; c++) {
            active[c] = state.isActive(c);
            condensedMoles[c] = state.condensedMoles[c];
        }
        logGas = state.logGas;
        temperature = state.temperature;
    }

    void forget() {
        owner = null;
    }

    /** @return whether the state stands at the mark now */
    boolean give(GibbsState state) {
        if (owner != state) {
            return false;
        }
        System.arraycopy(logMoles, 0, state.logMoles, 0, logMoles.length);
        System.arraycopy(potentials, 0, state.potentials, 0, potentials.length);
        for (int c = 0; c < active.length; c++) {
            state.setActive(c, active[c]);
            state.condensedMoles[c] = condensedMoles[c];
        }
        state.logGas = logGas;
        state.temperature = temperature;
        return true;
    }
}
