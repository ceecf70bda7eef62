package dev.penstock.cooling.wall;

import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Low-cycle fatigue of the hot wall by Manson's universal slopes.
 * <pre>
 * Δε = 3.5 (σ_u/E) N^−0.12 + D^0.6 N^−0.6,     D = ln[1/(1 − RA)]
 * Δε = 1.5 α (T_wg − T_shell) + α ΔT_wall/[2 (1 − ν)]     strain of one firing
 * </pre>
 * The shell is taken at coolant temperature. The factor 1.5 is the middle of the range of 1 to 2 in use for the
 * concentration of strain in the channel floor; life is N/4 [nasa-sp-8087]. Thinning of the floor from cycle to cycle and
 * creep are left out: real copper liners fail earlier when they run hot. Sources: [manson-1965], [nasa-sp-8087].
 */
public final class FatigueLife {

    public static final ModelCard CARD = new ModelCard(
            "cooling.fatigue-life",
            "Low-cycle fatigue, universal slopes",
            "d_eps = 3.5 (s_u/E) N^-0.12 + D^0.6 N^-0.6, D = ln[1/(1-RA)]; life N/4",
            "10 to 1e5 cycles, no creep, no thinning",
            "a factor of 4 on life",
            List.of("manson-1965", "nasa-sp-8087"));

    private static final double CONCENTRATION = 1.5;
    private static final double LIFE_FACTOR = 4;
    private static final double LONGEST = 1e9;

    private FatigueLife() {}

    /**
     * @param strengthOverModulus σ_u/E (-)
     * @param reductionOfArea reduction of area at fracture (-)
     * @param cycles cycles to failure N (-)
     * @return total strain range (-)
     */
    public static double strainRange(double strengthOverModulus, double reductionOfArea, double cycles) {
        double ductility = Math.log(1 / (1 - reductionOfArea));
        return 3.5 * strengthOverModulus * Math.pow(cycles, -0.12) + Math.pow(ductility, 0.6) * Math.pow(cycles, -0.6);
    }

    /**
     * @param strengthOverModulus σ_u/E (-)
     * @param reductionOfArea reduction of area at fracture (-)
     * @param strain total strain range (-)
     * @return cycles to failure N (-), between 1 and 1e9
     */
    public static double cycles(double strengthOverModulus, double reductionOfArea, double strain) {
        Require.notNegative("fatigue life", "strain range (-)", strain);
        if (strain <= strainRange(strengthOverModulus, reductionOfArea, LONGEST)) {
            return LONGEST;
        }
        if (strain >= strainRange(strengthOverModulus, reductionOfArea, 1)) {
            return 1;
        }
        return Math.exp(RootFinder.between(
                        "cycles to failure",
                        n -> Math.log(strainRange(strengthOverModulus, reductionOfArea, Math.exp(n)) / strain),
                        0,
                        Math.log(LONGEST),
                        1e-10)
                .value());
    }

    /** Strain of one firing (-). */
    public static double firingStrain(WallMaterial material, double hot, double floor, double shell) {
        double alpha = material.expansion().at(hot);
        double through = alpha * Math.abs(hot - floor) / (2 * (1 - material.poissonRatio()));
        return CONCENTRATION * alpha * Math.abs(hot - shell) + through;
    }

    /** Usable life: cycles to failure over four. */
    public static double life(WallMaterial material, double hot, double floor, double shell) {
        double mean = 0.5 * (hot + floor);
        double ratio = material.ultimateStrength().at(mean) / material.modulus().at(mean);
        return cycles(ratio, material.reductionOfArea(), firingStrain(material, hot, floor, shell)) / LIFE_FACTOR;
    }
}
