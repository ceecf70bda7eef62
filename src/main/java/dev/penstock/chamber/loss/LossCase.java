package dev.penstock.chamber.loss;

import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.flow.GasProfile;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;

/**
 * A chamber as the loss models see it.
 *
 * @param design what was asked for
 * @param injection what is injected
 * @param ideal loss-free expansion
 * @param profile ideal gas along the nozzle
 * @param drawing wall and its angles
 * @param solver equilibrium solver, free to be moved
 * @param near where the losses start; moves along
 */
public record LossCase(
        ChamberDesign design,
        Injection injection,
        IdealExpansion ideal,
        GasProfile profile,
        ContourBuilder.Drawing drawing,
        EquilibriumSolver solver,
        NearLosses near) {

    /** The same chamber with a wall of another size. */
    LossCase with(ContourBuilder.Drawing other) {
        return new LossCase(design, injection, ideal, profile, other, solver, near);
    }
}
