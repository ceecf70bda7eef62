package dev.penstock.turbomachinery.speed;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * First lateral critical speed of a rotor with its mass between two rigid bearings.
 * <pre>
 * ω1 = √(48 E I/(m L³)),   I = π d⁴/64
 * </pre>
 * A first estimate: soft bearings bring it down, seals that act as bearings bring it up, and overhung wheels change it altogether.
 */
public final class CriticalSpeed {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.critical-speed",
            "First critical speed of a rotor",
            "ω1 = √(48 E I/(m L³)), I = π d⁴/64, E = 200 GPa",
            "one mass at mid-span between rigid bearings",
            "a factor of 2: a first estimate",
            List.of("common practice, no source"));

    private static final double YOUNGS_MODULUS = 200e9;

    private CriticalSpeed() {}

    /**
     * @param shaftDiameter d (m)
     * @param span L between the bearings (m)
     * @param mass m of the rotor (kg)
     * @return first critical speed (rad/s)
     * @throws dev.penstock.errors.OutsideValidity if an argument is not positive
     */
    public static double first(double shaftDiameter, double span, double mass) {
        Require.positive(CARD.id(), "shaft diameter (m)", shaftDiameter);
        Require.positive(CARD.id(), "span (m)", span);
        Require.positive(CARD.id(), "rotor mass (kg)", mass);
        double second = Math.PI * Math.pow(shaftDiameter, 4) / 64;
        return Math.sqrt(48 * YOUNGS_MODULUS * second / (mass * span * span * span));
    }
}
