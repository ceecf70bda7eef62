package dev.penstock.turbomachinery.shaft;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import java.util.List;

/**
 * Mass of a turbopump from its shaft torque.
 * <pre>m = A τ^B,  A 1.5 (1.3 to 2.6), B 0.6 (0.6 to 0.667)</pre>
 */
public final class TurbopumpMass {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.turbopump-mass",
            "Turbopump mass from torque",
            "m = A τ^B, A = 1.5, B = 0.6 (SI)",
            "turbopumps of launch and upper-stage engines",
            "a factor of 2: A 1.3 to 2.6, B 0.60 to 0.667",
            List.of("humble-1995", "nasa-sp-8107"));

    private static final double COEFFICIENT = 1.5;
    private static final double EXPONENT = 0.6;

    private TurbopumpMass() {}

    /**
     * @param torque pump power over pump speed, summed over the pumps (N·m)
     * @return most likely mass (kg)
     * @throws dev.penstock.errors.OutsideValidity if the torque is not positive
     */
    public static double of(double torque) {
        return COEFFICIENT * Math.pow(Require.positive(CARD.id(), "torque (N·m)", torque), EXPONENT);
    }

    /**
     * @param torque pump power over pump speed, summed over the pumps (N·m)
     * @return mass with the spread of the relation (kg)
     */
    public static Spread spread(double torque) {
        double mode = of(torque);
        double high = 2.6 * Math.pow(torque, 0.667);
        double low = 1.3 * Math.pow(torque, EXPONENT);
        return new Spread(Math.min(low, mode), mode, Math.max(high, mode));
    }

    /**
     * @param mass most likely mass of a turbopump (kg)
     * @return the mass with the spread of the relation at the torque that belongs to it (kg)
     */
    public static Spread around(double mass) {
        return spread(Math.pow(Require.positive(CARD.id(), "mass (kg)", mass) / COEFFICIENT, 1 / EXPONENT));
    }
}
