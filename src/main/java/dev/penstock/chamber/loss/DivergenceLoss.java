package dev.penstock.chamber.loss;

import dev.penstock.chamber.contour.BellTable;
import dev.penstock.chamber.contour.TruncatedIdeal;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Thrust lost to streamlines that are curved and do not leave parallel to the axis.
 * <pre>
 * cone  λ = (1 + cos α)/2 on the momentum ṁ v_e, nothing on the pressure
 * bell  vacuum impulse in axisymmetric flow over that in one-dimensional flow, tabulated
 * ideal the same, marched for the very contour at γ 1.2
 * </pre>
 * The cone is the spherical source flow, [nasa-sp-125] equation 4-8, for half angles to 40°. The bell's table comes from
 * this package's own finite-volume march over the contours it draws, at constant γ; the mean isentropic exponent of the
 * expansion, ln(p_c/p_e)/ln(ρ_c/ρ_e), picks the entry. The same march gives cones within 0.25 % of λ. An 80 % bell comes
 * out at 0.990 to 0.993, a 60 % bell at 0.96 to 0.98, as [nasa-sp-8120] reports. Table: area ratio 1.5 to 400, length
 * 0.6 to 1, γ 1.10 to 1.34; its ends are kept beyond them.
 */
public final class DivergenceLoss extends LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.divergence",
            "Two-dimensional flow loss of a cone or bell",
            "cone λ = (1 + cos α)/2 on momentum; bell by axisymmetric finite-volume flow, tabulated",
            "half angles up to 40°; bells of area ratio 1.5 to 400, length 0.6 to 1 of a 15° cone",
            "0.25 %",
            List.of("nasa-sp-125", "nasa-sp-8120", "sauer-1947"));

    public DivergenceLoss() {
        super(LossKind.DIVERGENCE, CARD);
    }

    @Override
    public Result evaluate(LossCase chamber) {
        NozzleDesign nozzle = chamber.design().nozzle();
        IdealExpansion ideal = chamber.ideal();
        double exitAngle = chamber.drawing().exitAngle();
        Supplier<String> angle =
                () -> String.format(Locale.ROOT, "wall angle at the exit %.1f°", Math.toDegrees(exitAngle));
        if (nozzle.shape() == NozzleDesign.Shape.CONE) {
            double momentumShare = ideal.exit().velocity() / ideal.exit().vacuumImpulse();
            return Result.nozzle(1 - momentumShare * (1 - factor(nozzle.coneHalfAngle())), angle, Optional.empty());
        }
        if (nozzle.shape() == NozzleDesign.Shape.IDEAL) {
            return Result.nozzle(TruncatedIdeal.of(nozzle, ideal.areaRatio()).efficiency(), angle, Optional.empty());
        }
        double gamma = ideal.meanExponent();
        double factor = BellTable.efficiency(ideal.areaRatio(), nozzle.lengthFraction(), gamma);
        Optional<Warning> warning = ideal.areaRatio() > 400
                ? Optional.of(new Warning(CARD.id(), "the divergence loss beyond area ratio 400 is taken as at 400"))
                : Optional.empty();
        return Result.nozzle(factor, () -> String.format(Locale.ROOT, "%s, mean γ %.3f", angle.get(), gamma), warning);
    }

    /**
     * @param halfAngle half angle of the cone (rad)
     * @return axial over total momentum of a spherical source flow (-)
     */
    public static double factor(double halfAngle) {
        return (1 + Math.cos(halfAngle)) / 2;
    }
}
