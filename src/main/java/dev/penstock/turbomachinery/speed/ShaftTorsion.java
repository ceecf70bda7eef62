package dev.penstock.turbomachinery.speed;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Diameter of a solid round shaft from its torque.
 * <pre>
 * d = (16 τ/(π S))^(1/3)
 * ω d/2 = v  at  ω = (2v)^1.5 √(π S/(16 P))      since τ = P/ω
 * </pre>
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

    /**
     * @param power P that the shaft carries (W)
     * @param shearStress allowed S (Pa)
     * @param surfaceSpeed v (m/s)
     * @return speed at which a shaft sized for its torque has that surface speed (rad/s)
     * @throws dev.penstock.errors.OutsideValidity if an argument is not positive
     */
    public static double fastest(double power, double shearStress, double surfaceSpeed) {
        Require.positive(CARD.id(), "power (W)", power);
        Require.positive(CARD.id(), "shear stress (Pa)", shearStress);
        Require.positive(CARD.id(), "surface speed (m/s)", surfaceSpeed);
        return Math.pow(2 * surfaceSpeed, 1.5) * Math.sqrt(Math.PI * shearStress / (16 * power));
    }
}
