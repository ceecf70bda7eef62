package dev.penstock.turbomachinery.turbine;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Losses of a rotor that gas reaches on a part of its circumference only.
 * <pre>
 * filling and emptying: η → η [1 - (1 - ε)/(3 z ε)]        z blades, ε admitted share   (Stenning)
 * pumping of idle blades: Δη = (2C/π) (1 - ε)/ε · ν² U/cx  from P = C ρ D h (1 - ε) U³  (Traupel's form)
 * </pre>
 */
public final class PartialAdmission {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.partial-admission",
            "Loss of partial admission",
            "η → η [1 - (1 - ε)/(3zε)] - (2C/π)(1 - ε)/ε · ν² U/cx, z = 70, C = 0.4",
            "ε from 0.05 to 1, one admitted arc",
            "a factor of 2 on the loss (from memory)",
            List.of("stenning-1953", "nasa-sp-8110"));

    private static final double BLADES = 70;
    private static final double PUMPING = 0.4;

    private PartialAdmission() {}

    /**
     * @param efficiency with full admission (-)
     * @param admission ε (-), above 0 to 1
     * @param velocityRatio ν = U/C0 of the turbine (-)
     * @param speedOverAxial blade speed over axial gas velocity (-)
     * @return efficiency (-), not below a tenth of that with full admission
     */
    public static double efficiency(double efficiency, double admission, double velocityRatio, double speedOverAxial) {
        Require.within(CARD.id(), "admission (-)", admission, Double.MIN_NORMAL, 1);
        double idle = (1 - admission) / admission;
        double ends = idle / (3 * BLADES);
        double pumping = 2 * PUMPING / Math.PI * idle * velocityRatio * velocityRatio * speedOverAxial;
        // 1/(1 + loss) and 1 - loss agree for small losses; the former stays positive for tiny arcs
        return efficiency / (1 + ends + pumping / Math.max(efficiency, 1e-3));
    }
}
