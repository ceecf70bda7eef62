package dev.penstock.cooling.wall;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Buckling of the hot wall under its own thermal compression.
 * <pre>
 * channel floor   ε_cr = 6.97 π²/[12 (1 − ν²)] (t/w)² √(E_t/E)        plate clamped at the lands
 * tube            ε_cr = (t/r)/√(3 (1 − ν²)) · 4 E_t/(√E + √E_t)²      crown as a cylinder, buckling beyond yield
 * E_t = n σ_y/0.002,  n = ln(σ_u/σ_y)/ln 50                           tangent modulus at yield
 * </pre>
 * Held against the thermal strain α (T_m − T_shell), T_m the mean of both faces: the difference across the wall bends it, and does not
 * press it together. For tubes 0.9 of ε_cr is the limit; t/r is 0.1 and more there, so that nothing is taken off for dents, which matter
 * in cylinders a hundred times as thin. Source: plate, cylinder and reduced modulus from [timoshenko-gere-1961]; the form for tubes and
 * the 0.9 from [nasa-sp-125], from memory; reduction by the tangent modulus from [gerard-1957], from memory; the power law through
 * yield and ultimate strength is our own.
 */
public final class LinerBuckling {

    public static final ModelCard CARD = new ModelCard(
            "cooling.liner-buckling",
            "Buckling of the hot wall",
            "eps_cr = 6.97 pi^2/[12(1-nu^2)] (t/w)^2 sqrt(Et/E); tube (t/r)/sqrt(3(1-nu^2)) 4 Et/(sqrt(E)+sqrt(Et))^2",
            "thermal compression along the wall",
            "±40 % (own judgement)",
            List.of("timoshenko-gere-1961", "gerard-1957", "nasa-sp-125"));

    private static final double CLAMPED = 6.97;

    /** Thermal strain of a tube's crown over that at which it buckles, at most (-). */
    public static final double TUBE_SHARE = 0.9;

    private LinerBuckling() {}

    /**
     * @param material wall material
     * @param temperature wall temperature (K)
     * @return tangent over Young's modulus at yield (-), at most 1
     */
    static double tangentRatio(WallMaterial material, double temperature) {
        double yield = material.yieldStrength().at(temperature);
        double ultimate = Math.max(1.02 * yield, material.ultimateStrength().at(temperature));
        double exponent = Math.log(ultimate / yield) / Math.log(50);
        return Math.min(1, exponent * yield / 0.002 / material.modulus().at(temperature));
    }

    /** Strain at which the floor of a channel buckles (-). */
    public static double channelStrain(WallMaterial material, double temperature, double thickness, double width) {
        double nu = material.poissonRatio();
        double slenderness = thickness / width;
        return CLAMPED
                * Math.PI
                * Math.PI
                / (12 * (1 - nu * nu))
                * slenderness
                * slenderness
                * Math.sqrt(tangentRatio(material, temperature));
    }

    /** Strain at which the crown of a tube buckles (-). */
    public static double tubeStrain(WallMaterial material, double temperature, double thickness, double diameter) {
        double nu = material.poissonRatio();
        double root = 1 + Math.sqrt(tangentRatio(material, temperature));
        double reduced = 4 * tangentRatio(material, temperature) / (root * root);
        return 2 * thickness / diameter / Math.sqrt(3 * (1 - nu * nu)) * reduced;
    }
}
