package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Head coefficient and outlet width of radial impellers at best efficiency, by Gülich's regressions over specific speed.
 * <pre>
 * gH/u2² = 0.605 exp(-0.77 nq/100)
 * b2/D2  = 0.017 + 0.262 (nq/100) - 0.08 (nq/100)² + 0.0093 (nq/100)³
 * </pre>
 * Also the fixed values used for axial hydrogen stages: stage head 0.35 u², flow coefficient 0.30.
 */
public final class StageShape {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.stage-shape",
            "Head coefficient and outlet width of a stage",
            "gH/u2² = 0.605 exp(-0.77 nq/100); b2/D2 = 0.017 + 0.262 x - 0.08 x² + 0.0093 x³, x = nq/100; axial gH/u² = 0.35",
            "nq 5 to 100",
            "about 10 % on head coefficient, 20 % on width (from memory)",
            List.of("gulich-2014", "nasa-sp-125"));

    /**
     * Stage head over blade speed squared of an axial hydrogen stage (-): five stages make the 1.75 u² that is the middle of the 1.5
     * to 2.0 of whole axial pumps [nasa-sp-125]; its sample wheel has the same (from memory).
     */
    static final double AXIAL_HEAD_COEFFICIENT = 0.35;

    /** Axial velocity over blade speed of an axial hydrogen stage (-). */
    static final double AXIAL_FLOW_COEFFICIENT = 0.30;

    private StageShape() {}

    /**
     * @param metricSpecificSpeed nq of the stage
     * @return stage head over tip speed squared (-)
     * @throws dev.penstock.errors.OutsideValidity if the argument is not positive
     */
    public static double headCoefficient(double metricSpecificSpeed) {
        return 0.605
                * Math.exp(-0.77 * Require.positive(CARD.id(), "metric specific speed", metricSpecificSpeed) / 100);
    }

    /**
     * @param metricSpecificSpeed nq of the stage; above 250 the width of 250 is given
     * @return outlet width over outer diameter (-)
     * @throws dev.penstock.errors.OutsideValidity if the argument is not positive
     */
    public static double outletWidthRatio(double metricSpecificSpeed) {
        double x = Math.min(Require.positive(CARD.id(), "metric specific speed", metricSpecificSpeed), 250) / 100;
        return 0.017 + x * (0.262 + x * (-0.08 + x * 0.0093));
    }
}
