package dev.penstock.chamber;

import dev.penstock.chamber.flow.GasProfile;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;

/**
 * Altitude compensation of a plug nozzle or of a cluster of chambers around one, idealised.
 * <pre>
 * p_a ≥ p_e   the jet's outer edge is free: the flow expands to the ambient pressure and no further,
 *             F = η ṁ v(p = p_a)
 * p_a &lt; p_e   the plug is full: F = η F_vac,ideal − p_a A_e
 * </pre>
 * p_e is the one-dimensional exit pressure at the cluster's overall area ratio and η the bell chamber's delivered over ideal
 * impulse. Source of the idea: [nasa-sp-8120]. An upper bound: it has no loss that the bell does not have, so it is never below
 * the bell of the same area ratio. Built plugs lose 1 to 3 % more by gaps between chambers, a truncated plug with its base, waves
 * along the plug and the slip stream between Mach 1 and 3 (common practice, no source); nor is there a penalty for cooling or mass.
 */
public final class PlugNozzle {

    public static final ModelCard CARD = new ModelCard(
            "chamber.plug_nozzle",
            "Ideal altitude compensation of a plug cluster",
            "p_a ≥ p_e: F = η ṁ v(p_a); p_a < p_e: F = η F_vac − p_a A_e",
            "ambient pressure below the throat pressure; still air",
            "upper bound; built plugs lose 1 to 3 % more",
            List.of("nasa-sp-8120", "common practice, no source"));

    private final ChamberPerformance chamber;

    /** @param chamber one chamber of the cluster, its area ratio that of the whole cluster and plug */
    public PlugNozzle(ChamberPerformance chamber) {
        this.chamber = chamber;
    }

    /**
     * @param ambientPressure ambient pressure (Pa)
     * @return thrust per chamber (N)
     * @throws OutsideValidity if the ambient pressure is not below the throat pressure
     */
    public double thrustAt(double ambientPressure) {
        Require.notNegative(CARD.title(), "ambient pressure (Pa)", ambientPressure);
        GasProfile profile = chamber.profile();
        if (ambientPressure >= profile.throat().pressure()) {
            throw new OutsideValidity(
                    CARD.title(),
                    "ambient pressure (Pa)",
                    ambientPressure,
                    String.format(
                            Locale.ROOT,
                            "below the throat pressure of %.6g Pa",
                            profile.throat().pressure()));
        }
        double efficiency = chamber.vacuumImpulse() / chamber.ideal().vacuumImpulse();
        if (ambientPressure < profile.exit().pressure()) {
            double vacuum = efficiency * chamber.massFlow() * chamber.ideal().vacuumImpulse();
            double matched = efficiency * chamber.massFlow() * profile.exit().velocity();
            // Continuous at p_a = p_e, where the full plug is matched.
            return vacuum
                    - (vacuum - matched) * ambientPressure / profile.exit().pressure();
        }
        return efficiency
                * chamber.massFlow()
                * profile.atPressure(ambientPressure).velocity();
    }
}
