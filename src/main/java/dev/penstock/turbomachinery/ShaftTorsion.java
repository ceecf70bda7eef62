package dev.penstock.turbomachinery;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Diameter of a solid round shaft from its torque.
 * <pre>d = (16 τ/(π S))^(1/3)</pre>
 */
public final class ShaftTorsion {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.shaft-torsion",
            "Shaft diameter from torque",
            "d = (16 τ/(π S))^(1/3)",
            "solid round shaft, torsion only",
            "bending and keyways are in the allowed stress",
            List.of("common practice, no source"));

    private ShaftTorsion() {}

    /**
     * @param torque τ (N·m)
     * @param shearStress allowed S (Pa)
     * @return diameter (m)
     * @throws dev.penstock.errors.OutsideValidity if an argument is not positive
     */
    public static double diameter(double torque, double shearStress) {
        Require.positive(CARD.id(), "torque (N·m)", torque);
        Require.positive(CARD.id(), "shear stress (Pa)", shearStress);
        return Math.cbrt(16 * torque / (Math.PI * shearStress));
    }
}
