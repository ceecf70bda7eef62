package dev.penstock.chamber;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;

/**
 * Momentum lost because the exit flow is not parallel to the axis.
 * <pre>
 * cone  λ = (1 + cos α)/2
 * bell  λ = [1 + cos((α + θ_e)/2)]/2,  α = half angle of the cone of the same throat, exit and length
 * </pre>
 * Applied to the momentum term alone, ṁ v_e, not to the pressure term. The cone is the spherical source flow,
 * [nasa-sp-125] equation 4-8; the bell takes the mean of the wall angle at the exit and of the straight line to it, from
 * memory of textbook practice [nasa-sp-8120]. Angles below 40°; a bell comes out within about 0.3 % of the method of
 * characteristics.
 */
public final class DivergenceLoss implements LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.divergence",
            "Divergence of the exit flow",
            "λ = (1 + cos α)/2; bell: α replaced by the mean of exit angle and chord angle",
            "half angles up to 40°",
            "cone 0.1 %; bell 0.3 %",
            List.of("nasa-sp-125", "nasa-sp-8120"));

    @Override
    public LossKind kind() {
        return LossKind.DIVERGENCE;
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public Result evaluate(LossCase chamber) {
        ChamberContour contour = chamber.drawing().contour();
        double exitAngle = chamber.drawing().exitAngle();
        double angle = exitAngle;
        if (chamber.design().nozzle().shape() == NozzleDesign.Shape.BELL) {
            double chord = Math.atan((contour.exitRadius() - contour.throatRadius()) / contour.nozzleLength());
            angle = (chord + exitAngle) / 2;
        }
        double lambda = factor(angle);
        NozzleStation exit = chamber.ideal().exit();
        double momentumShare = exit.velocity() / exit.vacuumImpulse();
        return Result.of(
                1 - momentumShare * (1 - lambda),
                String.format(
                        Locale.ROOT,
                        "wall angle at the exit %.1f°, equivalent cone half angle %.1f°",
                        Math.toDegrees(exitAngle),
                        Math.toDegrees(angle)));
    }

    /**
     * @param halfAngle half angle of the cone (rad)
     * @return axial over total momentum of a spherical source flow (-)
     */
    public static double factor(double halfAngle) {
        return (1 + Math.cos(halfAngle)) / 2;
    }
}
