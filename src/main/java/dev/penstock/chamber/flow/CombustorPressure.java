package dev.penstock.chamber.flow;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Pressure at the injector face of a cylindrical combustor over the stagnation pressure at the nozzle entrance: heat added
 * to a moving gas costs stagnation pressure.
 * <pre>p_inj/p_c = (1 + γ M²) / [1 + (γ − 1)/2 M²]^(γ/(γ−1))</pre>
 * with M the subsonic Mach number at the end of the cylinder, where A/A_t is the contraction ratio. Momentum balance with
 * gas injected at rest: [nasa-sp-125] chapter 1, [nasa-rp-1311] finite-area combustor. Contraction ratio 1.1 to 20; a
 * ratio of 1.6 costs about 8 %, 3 about 2 %, 4 about 1 %.
 */
public final class CombustorPressure {

    public static final ModelCard CARD = new ModelCard(
            "chamber.injector_face_pressure",
            "Injector-face pressure of a finite combustor",
            "p_inj/p_c = (1 + γ M²)/[1 + (γ − 1)/2 M²]^(γ/(γ−1))",
            "subsonic cylinder, injection momentum neglected",
            "exact for its assumptions; a few tenths of a percent for γ constant",
            List.of("nasa-sp-125", "nasa-rp-1311"));

    private CombustorPressure() {}

    /**
     * @param entrance gas at the end of the cylinder, subsonic
     * @return injector-face static pressure over nozzle stagnation pressure (-)
     */
    public static double ratio(NozzleStation entrance) {
        return ratio(entrance.mach(), entrance.gamma());
    }

    /**
     * @param mach Mach number at the end of the cylinder (-), 0 to 1
     * @param gamma isentropic exponent (-)
     * @return injector-face static pressure over nozzle stagnation pressure (-)
     */
    public static double ratio(double mach, double gamma) {
        Require.within(CARD.title(), "Mach number (-)", mach, 0, 1);
        Require.within(CARD.title(), "gamma (-)", gamma, 1 + 1e-6, 2);
        double m2 = mach * mach;
        return (1 + gamma * m2) / Math.pow(1 + (gamma - 1) / 2 * m2, gamma / (gamma - 1));
    }
}
