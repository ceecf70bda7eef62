package dev.penstock.turbomachinery.shaft;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Helium that flows both ways out of the buffer cavity of an interpropellant seal, choked in the seal gaps.
 * <pre>
 * ṁ = 2 C_d π d δ p √(γ/(R T)) (2/(γ+1))^((γ+1)/(2(γ-1)))
 * </pre>
 */
public final class SealPurge {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.seal-purge",
            "Purge flow of an interpropellant seal",
            "ṁ = 2 Cd π d δ p √(γ/(RT)) (2/(γ+1))^((γ+1)/(2(γ-1))), helium, Cd 0.8, δ = 20 µm + 0.0005 d, p 0.6 MPa, T 290 K",
            "ring seals with choked gaps",
            "a factor of 3: it goes with the gap",
            List.of("common practice, no source"));

    private static final double DISCHARGE = 0.8;
    private static final double PRESSURE = 0.6e6;
    private static final double TEMPERATURE = 290;
    private static final double GAMMA = 5.0 / 3;
    private static final double MOLAR_MASS = 4.002602e-3;

    private SealPurge() {}

    /**
     * @param shaftDiameter d at the seal (m)
     * @return helium flow (kg/s)
     * @throws dev.penstock.errors.OutsideValidity if the diameter is not positive
     */
    public static double flow(double shaftDiameter) {
        Require.positive(CARD.id(), "shaft diameter (m)", shaftDiameter);
        double gap = 20e-6 + 0.0005 * shaftDiameter;
        double area = 2 * Math.PI * shaftDiameter * gap;
        double choking = Math.pow(2 / (GAMMA + 1), (GAMMA + 1) / (2 * (GAMMA - 1)));
        double gasConstant = Constants.MOLAR_GAS_CONSTANT / MOLAR_MASS;
        return DISCHARGE * area * PRESSURE * Math.sqrt(GAMMA / (gasConstant * TEMPERATURE)) * choking;
    }
}
