package dev.penstock.vehicle.stage;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.plan.DeltaVBudget;
import java.util.List;

/**
 * Speed gained by a rocket in free space, by Tsiolkovsky's equation.
 *
 * <pre>Δv = c ln(m0 / mf),  c = Isp g0</pre>
 *
 * Source: [tsiolkovsky-1903]. Exact for constant exhaust velocity without gravity, drag or back-pressure; those enter as
 * named losses in a {@link DeltaVBudget}.
 */
public final class RocketEquation {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.rocket-equation",
            "Rocket equation",
            "Δv = Isp g0 ln(m0/mf)",
            "constant exhaust velocity, free space",
            "exact within its assumptions",
            List.of("tsiolkovsky-1903"));

    private RocketEquation() {}

    /**
     * @param exhaustVelocity effective exhaust velocity (m/s)
     * @param startMass mass before the burn (kg)
     * @param finalMass mass after the burn (kg)
     * @return speed gained (m/s)
     * @throws OutsideValidity if a mass is not positive or the final mass is above the start mass
     */
    public static double deltaV(double exhaustVelocity, double startMass, double finalMass) {
        Require.positive("rocket equation", "start mass (kg)", startMass);
        if (!(finalMass > 0 && finalMass <= startMass)) {
            throw new OutsideValidity(
                    "rocket equation", "final mass (kg)", finalMass, "above 0 and at most the start mass " + startMass);
        }
        return exhaustVelocity * Math.log(startMass / finalMass);
    }

    /**
     * @param deltaV speed to gain (m/s)
     * @param exhaustVelocity effective exhaust velocity (m/s)
     * @return start mass over final mass (-)
     */
    public static double massRatio(double deltaV, double exhaustVelocity) {
        Require.notNegative("rocket equation", "delta-v (m/s)", deltaV);
        Require.positive("rocket equation", "exhaust velocity (m/s)", exhaustVelocity);
        return Math.exp(deltaV / exhaustVelocity);
    }
}
