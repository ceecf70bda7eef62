package dev.penstock.chamber.loss;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Drop of the energy-release efficiency when an injector of fixed orifices is throttled: slower injection makes larger drops
 * that have less time, relative to their life, to vaporise.
 * <pre>
 * generalised length  L_g ~ p_c^0.66 r_m^−1.45 V^−0.75,   r_m ~ V^−1/2,   V ~ f,  p_c ~ f    so    L_g ~ f^0.635
 * unvaporised share   u(f) = u(1)^(f^0.635)
 * efficiency          η(f) = η(1) [1 − u(f)]/[1 − u(1)]
 * </pre>
 * f is mass flow over its design value. The generalised length is that of [priem-heidmann-1960]; the drop size against
 * injection velocity that of [ingebo-1958]; the exponential fall of the unvaporised share with length is a fit to their
 * curves' upper end, from memory. u(1) = 0.003 is assumed of a developed injector (common practice, no source). Throttle 0.05
 * to 1.2; below about 0.4 treat it as a trend. An injector with variable orifices does not lose this.
 */
public final class ThrottledCombustion {

    public static final ModelCard CARD = new ModelCard(
            "chamber.throttled_combustion",
            "Energy release of a fixed injector at part flow",
            "η(f)/η(1) = [1 − u^(f^0.635)]/(1 − u)",
            "f 0.05 to 1.2, fixed orifices, liquid injection",
            "half of the drop",
            List.of("priem-heidmann-1960", "ingebo-1958", "common practice, no source"));

    private static final double UNVAPORISED = 0.003;
    private static final double EXPONENT = 0.66 + 1.45 / 2 - 0.75;

    private ThrottledCombustion() {}

    /**
     * @param atDesign energy-release efficiency at design flow (-)
     * @param throttle mass flow over design mass flow (-), 0.05 to 1.2
     * @return energy-release efficiency at that flow (-)
     * @throws dev.penstock.errors.OutsideValidity if an argument is outside its range
     */
    public static double energyRelease(double atDesign, double throttle) {
        Require.within(CARD.title(), "energy-release efficiency (-)", atDesign, 0.5, 1);
        Require.within(CARD.title(), "throttle (-)", throttle, 0.05, 1.2);
        double left = Math.pow(UNVAPORISED, Math.pow(throttle, EXPONENT));
        return Math.min(1, atDesign * (1 - left) / (1 - UNVAPORISED));
    }
}
