package dev.penstock.turbomachinery.turbine;

import dev.penstock.combustion.WorkingState;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.speed.Smooth;
import java.util.List;

/**
 * What a small turbine loses beyond a large one of the same triangles: by a tip gap that does not shrink with the blade, and by a
 * low Reynolds number.
 * <pre>
 * gap          δ = max(0.25 mm, D/1000);   η → η/(1 + 2 (max(δ/h, 0.02) − 0.02))
 * Reynolds     Re = ρ w h/μ;   1 − η → (1 − η)(Re/2·10⁵)^−0.4 below 2·10⁵
 * viscosity    μ = 1.184·10⁻⁷ √M T^0.6 Pa·s, M in g/mol
 * </pre>
 * A gap of 2 % of the blade is what the efficiency factor already holds. The factor 2 is 0.93/cos α₂ of [kacker-okapuu-1982] at
 * gas angles of 60° to 65° from the axis, unshrouded; their Reynolds number is that of the chord, here taken as long as the blade is
 * high. Viscosity: [nasa-sp-125].
 */
public final class SizeLoss {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.turbine-size-loss",
            "Tip gap and Reynolds number of small turbines",
            "η → η/(1 + 2(δ/h − 0.02)), δ = max(0.25 mm, D/1000); 1 − η → (1 − η)(Re/2e5)^−0.4 below Re 2e5",
            "axial turbines, unshrouded or nearly so, blades above 1 mm",
            "half of the loss (from memory)",
            List.of("kacker-okapuu-1982", "nasa-sp-8110", "nasa-sp-125"));

    private static final double LEAST_GAP = 0.25e-3;
    private static final double GAP_OVER_DIAMETER = 1e-3;
    private static final double USUAL_GAP = 0.02;
    private static final double PER_GAP = 2;
    private static final double REYNOLDS = 2e5;

    private SizeLoss() {}

    /**
     * @param efficiency without these losses (-), above 0 to 1
     * @param diameter pitch diameter (m)
     * @param height blade height (m)
     * @param exit static state behind the last rotor
     * @param velocity relative velocity behind the last rotor (m/s)
     * @return efficiency with them (-), above 0
     */
    public static double efficiency(
            double efficiency, double diameter, double height, WorkingState exit, double velocity) {
        Require.within(CARD.id(), "efficiency (-)", efficiency, Double.MIN_NORMAL, 1);
        double gap = Smooth.greatest(LEAST_GAP, GAP_OVER_DIAMETER * diameter) / height;
        double withGap = efficiency / (1 + PER_GAP * (Smooth.greatest(gap, USUAL_GAP) - USUAL_GAP));
        double reynolds = exit.density() * velocity * height / viscosity(exit);
        double more = Smooth.greatest(1, Math.pow(reynolds / REYNOLDS, -0.4));
        // 1 - (1 - η) f and η/(η + (1 - η) f) agree for small losses; the latter stays positive
        return withGap / (withGap + (1 - withGap) * more);
    }

    private static double viscosity(WorkingState gas) {
        double molarMass = 1e3 * gas.density() * Constants.MOLAR_GAS_CONSTANT * gas.temperature() / gas.pressure();
        return 1.184e-7 * Math.sqrt(molarMass) * Math.pow(gas.temperature(), 0.6);
    }
}
