package dev.penstock.cooling.coolant;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Friction in a passage, any roughness and flow regime.
 * <pre>
 * turbulent  1/√f = −1.8 log10[(ε/(3.7 D))^1.11 + 6.9/Re]     Darcy
 * laminar    f = 64/Re
 * between Re 2300 and 4000 a straight line from one to the other
 * </pre>
 * Source: [haaland-1983], within 1.5 % of Colebrook for Re ≥ 4000 and ε/D ≤ 0.05.
 */
public final class ChannelFriction {

    public static final ModelCard CARD = new ModelCard(
            "cooling.friction",
            "Friction in a rough passage, Haaland",
            "1/sqrt(f) = -1.8 log10[(e/(3.7 D))^1.11 + 6.9/Re] (Darcy); 64/Re below Re 2300",
            "ε/D ≤ 0.05",
            "1.5 % against Colebrook; ±10 % in real channels (from memory)",
            List.of("haaland-1983"));

    /** Below this Reynolds number flow is taken as laminar (-). */
    static final double LAMINAR = 2300;

    /** Above this Reynolds number flow is taken as turbulent (-). */
    public static final double TURBULENT = 4000;

    private ChannelFriction() {}

    /**
     * @param reynolds Reynolds number on hydraulic diameter (-)
     * @param relativeRoughness roughness over hydraulic diameter (-)
     * @return Darcy friction factor (-)
     */
    public static double factor(double reynolds, double relativeRoughness) {
        if (reynolds <= LAMINAR) {
            return 64 / reynolds;
        }
        if (reynolds >= TURBULENT) {
            return turbulent(reynolds, relativeRoughness);
        }
        double laminar = 64 / LAMINAR;
        double turbulent = turbulent(TURBULENT, relativeRoughness);
        return laminar + turbulentShare(reynolds) * (turbulent - laminar);
    }

    /**
     * @param reynolds Reynolds number (-)
     * @return 0 for laminar, 1 for turbulent, a straight line between (-)
     */
    public static double turbulentShare(double reynolds) {
        return Math.max(0, Math.min(1, (reynolds - LAMINAR) / (TURBULENT - LAMINAR)));
    }

    private static double turbulent(double reynolds, double relativeRoughness) {
        double root = -1.8 * Math.log10(Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        return 1 / (root * root);
    }
}
