package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Efficiency of industrial radial pumps from metric specific speed and volume flow, by Gülich's regressions.
 * <pre>
 * one stage:   η = 1 - 0.095 Q^-m - 0.3 [0.35 - lg(nq/23)]² Q^0.05,   m = 0.1 a Q^-0.15 (45/nq)^0.06
 * more stages: η = 1 - 0.116 Q^-m - 0.4 [0.26 - lg(nq/25)]²,          m = 0.08 a Q^-0.15 (45/nq)^0.06
 * nq = n √Q / H^0.75 per stage (n in 1/min, Q in m³/s, H in m);  a = 1 up to 1 m³/s, 0.5 above
 * </pre>
 * The exponent m is held below {@value #SMALLEST_FLOW} m³/s, where the regression would run away, and where the losses exceed
 * 0.4 the efficiency goes on as 0.6·exp(-(loss - 0.4)/0.6), which has the same value and slope there and stays above zero: an
 * extrapolation for small pumps that the caller warns about.
 */
public final class GulichEfficiency {

    /** Lowest flow of the regression (m³/s). */
    public static final double SMALLEST_FLOW = 0.005;

    /** Lowest metric specific speed of the regression. */
    public static final double LOWEST_SPECIFIC_SPEED = 5;

    /** Highest metric specific speed of the regression. */
    public static final double HIGHEST_SPECIFIC_SPEED = 100;

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.pump-efficiency",
            "Pump efficiency from specific speed and size",
            "one stage: η = 1 - 0.095 Q^-m - 0.3 [0.35 - lg(nq/23)]² Q^0.05; more: η = 1 - 0.116 Q^-m - 0.4 [0.26 - lg(nq/25)]²;"
                    + " times the rocket-pump factor",
            "nq 5 to 100, Q from 0.005 m³/s; continued smoothly to smaller pumps with a warning",
            "industrial pumps run 10 to 19 points above rocket pumps; the factor's spread covers it",
            List.of("gulich-2014", "nasa-sp-125"));

    private static final double KNEE = 0.4;

    private GulichEfficiency() {}

    /**
     * @param metricSpecificSpeed nq of one stage, 1/min, m³/s and m
     * @param volumeFlow through a stage (m³/s)
     * @param stages number of stages, 1 or more
     * @return efficiency of a good industrial pump (-), above 0 and below 1
     * @throws dev.penstock.errors.OutsideValidity if an argument is not positive
     */
    public static double of(double metricSpecificSpeed, double volumeFlow, int stages) {
        double nq = Require.positive(CARD.id(), "metric specific speed", metricSpecificSpeed);
        double q = Require.positive(CARD.id(), "volume flow (m³/s)", volumeFlow);
        double a = q <= 1 ? 1 : 0.5;
        double flowTerm = a * Math.pow(Math.max(q, SMALLEST_FLOW), -0.15) * Math.pow(45 / nq, 0.06);
        double loss;
        if (stages == 1) {
            double shape = 0.35 - Math.log10(nq / 23);
            loss = 0.095 * Math.pow(q, -0.1 * flowTerm) + 0.3 * shape * shape * Math.pow(q, 0.05);
        } else {
            double shape = 0.26 - Math.log10(nq / 25);
            loss = 0.116 * Math.pow(q, -0.08 * flowTerm) + 0.4 * shape * shape;
        }
        return loss <= KNEE ? 1 - loss : (1 - KNEE) * Math.exp(-(loss - KNEE) / (1 - KNEE));
    }
}
