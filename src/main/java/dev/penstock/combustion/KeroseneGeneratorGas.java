package dev.penstock.combustion;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Gas of a fuel-rich oxygen-kerosene gas generator: temperature, cp and gamma against mixture ratio, as measured and
 * tabulated for turbine design. Most of the fuel leaves vaporised and cracked, far from equilibrium.
 *
 * <p>Source: [nasa-sp-125], table of gas-generator data, from memory; the row at 1400 °F (mixture ratio 0.408, cp 0.653
 * Btu/(lb·°R), gamma 1.124) is confirmed by the turbine sample calculation of the same book. Holds for mixture ratios
 * 0.308 to 0.516 and the usual 3 MPa to 10 MPa; beyond, to 0.2 and 0.7, continued by the end slopes with a warning.
 */
public final class KeroseneGeneratorGas {

    /** What this model is. */
    public static final ModelCard CARD = new ModelCard(
            "combustion.kerosene-generator-gas",
            "Fuel-rich oxygen-kerosene gas, measured",
            "T, cp and gamma interpolated linearly in mixture ratio",
            "mixture ratio 0.308 to 0.516, continued with a warning to 0.2 and 0.7",
            "temperature about 30 K, cp and gamma about 3 percent (common practice, no source)",
            List.of("nasa-sp-125"));

    private static final double LOWEST = 0.2;
    private static final double HIGHEST = 0.7;
    private static final double BTU_PER_LB_R = 4186.8;

    private static final double[] MIXTURE_RATIO = {0.308, 0.337, 0.372, 0.408, 0.443, 0.480, 0.516};
    /** 1100, 1200, ... 1700 °F. */
    private static final double[] TEMPERATURE = {866.48, 922.04, 977.59, 1033.15, 1088.71, 1144.26, 1199.82};

    private static final double[] HEAT_CAPACITY = {0.635, 0.639, 0.645, 0.653, 0.660, 0.668, 0.676};
    private static final double[] GAMMA = {1.097, 1.106, 1.115, 1.124, 1.132, 1.140, 1.148};

    private KeroseneGeneratorGas() {}

    /**
     * @param mixtureRatio oxygen over kerosene by mass (-)
     * @param reactantEnthalpy enthalpy of the reactants (J/kg)
     * @return the gas
     * @throws OutsideValidity outside mixture ratios 0.2 to 0.7
     */
    public static EmpiricalWorkingFluid at(double mixtureRatio, double reactantEnthalpy) {
        Require.within(CARD.title(), "mixture ratio (-)", mixtureRatio, LOWEST, HIGHEST);
        return new EmpiricalWorkingFluid(
                String.format(
                        Locale.ROOT, "fuel-rich oxygen-kerosene gas at mixture ratio %.3f, measured", mixtureRatio),
                BTU_PER_LB_R * interpolate(MIXTURE_RATIO, HEAT_CAPACITY, mixtureRatio),
                interpolate(MIXTURE_RATIO, GAMMA, mixtureRatio),
                interpolate(MIXTURE_RATIO, TEMPERATURE, mixtureRatio),
                reactantEnthalpy);
    }

    /**
     * @param temperature wanted gas temperature (K)
     * @return mixture ratio that gives it (-)
     * @throws OutsideValidity if that lies outside 0.2 to 0.7
     */
    public static double mixtureRatioFor(double temperature) {
        double ratio = interpolate(TEMPERATURE, MIXTURE_RATIO, temperature);
        if (!(ratio >= LOWEST && ratio <= HIGHEST)) {
            throw new OutsideValidity(
                    CARD.title(),
                    "gas temperature (K)",
                    temperature,
                    String.format(
                            Locale.ROOT,
                            "%.0f K to %.0f K",
                            interpolate(MIXTURE_RATIO, TEMPERATURE, LOWEST),
                            interpolate(MIXTURE_RATIO, TEMPERATURE, HIGHEST)));
        }
        return ratio;
    }

    /**
     * @param mixtureRatio oxygen over kerosene by mass (-)
     * @return a warning if the table does not reach that far
     */
    public static Optional<Warning> warning(double mixtureRatio) {
        if (mixtureRatio >= MIXTURE_RATIO[0] && mixtureRatio <= MIXTURE_RATIO[MIXTURE_RATIO.length - 1]) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                CARD.id(),
                String.format(
                        Locale.ROOT,
                        "mixture ratio %.3f is outside the measured 0.308 to 0.516; the end slopes are continued",
                        mixtureRatio)));
    }

    private static double interpolate(double[] x, double[] y, double at) {
        int i = 1;
        while (i < x.length - 1 && at > x[i]) {
            i++;
        }
        return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
    }
}
