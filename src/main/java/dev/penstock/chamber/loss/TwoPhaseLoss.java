package dev.penstock.chamber.loss;

import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.NozzleStation;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Impulse lost because condensed particles lag behind the gas.
 * <pre>
 * lag in velocity     v_p/v = 1/(1 + τ_v dv/dx),   τ_v = ρ_p d²/(18 μ)     (Stokes drag, constant fractional lag)
 * loss                x_c (1 − v_p/v) of the impulse, x_c = mass fraction condensed at the exit
 * </pre>
 * with dv/dx taken at the throat, v_t/√(r_t R), where it is largest. Constant-lag flow: [kliegel-1960]. Soot of 1 µm and
 * 1900 kg/m³ is assumed (common practice, no source): it follows the gas almost perfectly, and the loss is small beside the
 * ideal expansion's own account of condensed matter. Temperature lag is left out; it is of the same size.
 */
public final class TwoPhaseLoss extends LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.two_phase",
            "Two-phase flow with constant fractional lag",
            "loss = x_c [1 − 1/(1 + τ_v dv/dx)], τ_v = ρ_p d²/(18 μ)",
            "condensed mass fraction below about 0.3, particles in Stokes flow",
            "a factor of two of the loss, from the assumed particle size",
            List.of("kliegel-1960", "common practice, no source"));

    private static final double DIAMETER = 1e-6; // m
    private static final double PARTICLE_DENSITY = 1900; // kg/m³

    public TwoPhaseLoss() {
        super(LossKind.TWO_PHASE, CARD);
    }

    @Override
    public OfSize ofSize(LossCase chamber) {
        return drawing -> evaluate(chamber.with(drawing));
    }

    @Override
    public Result evaluate(LossCase chamber) {
        double condensed = chamber.profile().exitCondensedFraction();
        if (condensed < 1e-9) {
            return Result.nozzle(1, "no condensed matter at the exit");
        }
        NozzleStation throat = chamber.ideal().throat();
        ChamberContour contour = chamber.drawing().contour();
        double gradient = throat.velocity() / Math.sqrt(contour.throatRadius() * contour.throatCurvatureRadius());
        double relaxation = PARTICLE_DENSITY * DIAMETER * DIAMETER / (18 * throat.viscosity());
        double lag = 1 / (1 + relaxation * gradient);
        return Result.nozzle(
                1 - condensed * (1 - lag),
                () -> String.format(
                        Locale.ROOT,
                        "%.2f %% of the mass condensed at the exit, velocity lag %.4f",
                        100 * condensed,
                        lag),
                Optional.empty());
    }
}
