package dev.penstock.chamber.flow;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.provenance.ModelCard;

/**
 * Ideal rocket performance of a mixture: adiabatic combustion in a chamber of infinite area, then a one-dimensional
 * isentropic expansion with shifting, frozen or throat-frozen composition.
 * <pre>
 * c* = p_c/(ρ_t v_t);  I_vac = v_e + p_e/(ρ_e v_e);  C_F,vac = I_vac/c*
 * </pre>
 * Source: [nasa-rp-1311] part I, chapter 6. The chamber pressure is the stagnation pressure of the nozzle flow; the rise
 * towards the injector face in a finite chamber is {@link CombustorPressure}. Every expansion starts the solver inside afresh or
 * from what its caller hands it ({@link NearExpansion}), so no answer depends on who asked before. Not thread-safe, like that solver.
 */
public final class NozzleFlow {

    public static final ModelCard CARD = IsentropicFlow.CARD;

    private final EquilibriumSolver solver;

    /** @param solver equilibrium solver whose species cover every mixture that will be asked for */
    public NozzleFlow(EquilibriumSolver solver) {
        this.solver = solver;
    }

    /**
     * @param library species to choose from
     * @param reactants a mixture whose elements cover all that will be asked for
     * @return a nozzle flow with its own solver, whose gas takes up room ({@link dev.penstock.combustion.species.SecondVirial})
     */
    public static NozzleFlow of(SpeciesLibrary library, Reactants reactants) {
        return new NozzleFlow(EquilibriumSolver.dense(library, reactants));
    }

    /** @return the solver inside */
    public EquilibriumSolver solver() {
        return solver;
    }

    /**
     * Chamber and throat, for several exits.
     *
     * @param reactants mixture with its enthalpy as injected
     * @param chamberPressure stagnation pressure (Pa)
     * @param mode what the composition does
     * @return the expansion, ready for exits
     */
    public Expansion expand(Reactants reactants, double chamberPressure, ExpansionMode mode) {
        return expand(reactants, chamberPressure, mode, new NearExpansion());
    }

    /**
     * The same, from an expansion of nearly the same gas.
     *
     * @param reactants mixture with its enthalpy as injected
     * @param chamberPressure stagnation pressure (Pa)
     * @param mode what the composition does
     * @param near where to start; moves along
     * @return the expansion, ready for exits
     */
    public Expansion expand(Reactants reactants, double chamberPressure, ExpansionMode mode, NearExpansion near) {
        return new Expansion(solver, reactants, chamberPressure, mode, near);
    }

    /**
     * @param reactants mixture with its enthalpy as injected
     * @param chamberPressure stagnation pressure (Pa)
     * @param areaRatio exit area over throat area (-), 1 to 5000
     * @param mode what the composition does
     * @return the expansion
     * @throws dev.penstock.errors.OutsideValidity if an argument is outside these bounds
     */
    public IdealExpansion toAreaRatio(
            Reactants reactants, double chamberPressure, double areaRatio, ExpansionMode mode) {
        return expand(reactants, chamberPressure, mode).toAreaRatio(areaRatio);
    }
}
