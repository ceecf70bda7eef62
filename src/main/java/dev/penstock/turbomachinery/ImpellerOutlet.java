package dev.penstock.turbomachinery;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Velocity triangle at an impeller's outlet: a first look at vane angle, slip and width for whoever draws the impeller.
 * <pre>
 * cu2' = H_i/u2                     real whirl, from the ideal head (J/kg), inlet whirl included (Euler)
 * cu2  = cu2'/e_v                   whirl without slip, e_v the vane effectiveness
 * cm2  = (u2 - cu2) tan β2
 * b2   = Q/(π d2 cm2 k)             k the share of the circumference that the vanes leave free
 * slip without flow: Wiesner 1 - √(sin β2)/z^0.7,  Stodola 1 - π sin β2/z
 * </pre>
 *
 * @param whirl cu2' (m/s)
 * @param whirlWithoutSlip cu2 (m/s)
 * @param meridionalVelocity cm2 (m/s)
 * @param width b2 (m)
 */
public record ImpellerOutlet(double whirl, double whirlWithoutSlip, double meridionalVelocity, double width) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.impeller-outlet",
            "Velocity triangle at an impeller's outlet",
            "cu2' = H_i/u2; cu2 = cu2'/e_v; cm2 = (u2 - cu2) tan β2; b2 = Q/(π d2 cm2 k)",
            "radial and Francis impellers with β2 17° to 28°",
            "vane effectiveness 0.65 to 0.75",
            List.of("nasa-sp-125"));

    public ImpellerOutlet {
        Require.positive(CARD.id(), "whirl (m/s)", whirl);
        Require.positive(CARD.id(), "meridional velocity (m/s)", meridionalVelocity);
        Require.positive(CARD.id(), "width (m)", width);
    }

    /**
     * @param tipSpeed u2 (m/s)
     * @param diameter d2 (m)
     * @param idealHead H_i, head with hydraulic losses (J/kg)
     * @param volumeFlow Q through the impeller, leakage included (m³/s)
     * @param vaneAngle β2 (rad)
     * @param vaneEffectiveness e_v (-)
     * @param freeCircumference k (-)
     * @return the triangle
     * @throws dev.penstock.errors.OutsideValidity if the head asks for more whirl than the tip speed
     */
    public static ImpellerOutlet of(
            double tipSpeed,
            double diameter,
            double idealHead,
            double volumeFlow,
            double vaneAngle,
            double vaneEffectiveness,
            double freeCircumference) {
        Require.positive(CARD.id(), "tip speed (m/s)", tipSpeed);
        Require.within(CARD.id(), "vane effectiveness (-)", vaneEffectiveness, 0.3, 1);
        Require.within(CARD.id(), "free circumference (-)", freeCircumference, 0.3, 1);
        double whirl = idealHead / tipSpeed;
        double withoutSlip = whirl / vaneEffectiveness;
        double meridional = (tipSpeed - withoutSlip) * Math.tan(vaneAngle);
        double width = volumeFlow / (Math.PI * diameter * meridional * freeCircumference);
        return new ImpellerOutlet(whirl, withoutSlip, meridional, width);
    }

    /**
     * @param vaneAngle β2 (rad)
     * @param vanes z
     * @return slip factor by Wiesner (-)
     */
    public static double wiesner(double vaneAngle, int vanes) {
        Require.within(CARD.id(), "vanes", vanes, 2, 40);
        return 1 - Math.sqrt(Math.sin(vaneAngle)) / Math.pow(vanes, 0.7);
    }

    /**
     * @param vaneAngle β2 (rad)
     * @param vanes z
     * @return slip factor by Stodola (-)
     */
    public static double stodola(double vaneAngle, int vanes) {
        Require.within(CARD.id(), "vanes", vanes, 2, 40);
        return 1 - Math.PI * Math.sin(vaneAngle) / vanes;
    }
}
