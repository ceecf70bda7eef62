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

    /** Built turbopumps over the relation (-): its coefficients span a factor of two, here about the middle. */
    public static final Spread SCATTER = new Spread(Math.sqrt(0.5), 1, Math.sqrt(2));

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
}
