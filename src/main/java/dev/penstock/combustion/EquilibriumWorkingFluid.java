package dev.penstock.combustion;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.provenance.ModelCard;
import java.util.OptionalDouble;

/**
 * Burnt gas that stays in chemical equilibrium as it expands. Several such fluids may share a solver; each question starts
 * it afresh, so that no answer depends on another. Safe to share between threads once nothing else moves the solver.
 */
public final class EquilibriumWorkingFluid implements WorkingFluid {

    private final EquilibriumSolver solver;
    private final Reactants reactants;

    /**
     * @param solver solver for (at least) the elements of the mixture
     * @param reactants what was burnt
     */
    public EquilibriumWorkingFluid(EquilibriumSolver solver, Reactants reactants) {
        this.solver = solver;
        this.reactants = reactants;
    }

    @Override
    public String description() {
        return "burnt gas of " + reactants.names(" and ") + " in chemical equilibrium";
    }

    @Override
    public ModelCard model() {
        return EquilibriumSolver.CARD;
    }

    @Override
    public OptionalDouble moleFraction(String species, double pressure, double temperature) {
        synchronized (solver) {
            startAfresh();
            solver.setPressureTemperature(pressure, temperature);
            return OptionalDouble.of(solver.freeze().moleFraction(species));
        }
    }

    @Override
    public WorkingState atPressureTemperature(double pressure, double temperature) {
        synchronized (solver) {
            startAfresh();
            solver.setPressureTemperature(pressure, temperature);
            return state();
        }
    }

    @Override
    public WorkingState atPressureEnthalpy(double pressure, double enthalpy) {
        synchronized (solver) {
            startAfresh();
            solver.setPressureEnthalpy(pressure, enthalpy);
            return state();
        }
    }

    @Override
    public WorkingState atPressureEntropy(double pressure, double entropy) {
        synchronized (solver) {
            startAfresh();
            solver.setPressureEntropy(pressure, entropy);
            return state();
        }
    }

    private void startAfresh() {
        solver.setMixture(reactants);
        solver.forget();
    }

    private WorkingState state() {
        return new WorkingState(
                solver.pressure(),
                solver.temperature(),
                solver.density(),
                solver.enthalpy(),
                solver.entropy(),
                solver.equilibriumHeatCapacity(),
                solver.isentropicExponent(),
                solver.soundSpeed());
    }
}
