package dev.penstock.chamber;

import dev.penstock.combustion.EquilibriumSolver;

/**
 * A chamber as the loss models see it.
 *
 * @param design what was asked for
 * @param injection what is injected
 * @param ideal loss-free expansion
 * @param profile ideal gas along the nozzle
 * @param drawing wall and its angles
 * @param solver equilibrium solver, free to be moved
 */
record LossCase(
        ChamberDesign design,
        Injection injection,
        IdealExpansion ideal,
        GasProfile profile,
        ContourBuilder.Drawing drawing,
        EquilibriumSolver solver) {}
