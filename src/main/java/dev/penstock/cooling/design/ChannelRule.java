package dev.penstock.cooling.design;

import dev.penstock.errors.Require;

/**
 * Shape of a set of channels but for their depth, which follows from the mass flux.
 *
 * @param pitch circumference at the throat's channel floor per channel (m)
 * @param widthShare channel width over pitch (-); tubes take the pitch less their walls
 * @param massFluxExponent n in G = G_t (r_t/r)^n (-)
 * @param wallMargin margin kept to the wall limits, as a fraction of them (-)
 * @param slenderness height over width to be kept where 0.7 of the largest mass flux does that (-)
 */
public record ChannelRule(
        double pitch, double widthShare, double massFluxExponent, double wallMargin, double slenderness) {

    private static final double REFERENCE_PITCH = 2e-3;
    private static final double REFERENCE_DIAMETER = 0.25;
    private static final double SMALLEST_PITCH = 1.2e-3;
    private static final double LARGEST_PITCH = 6e-3;
    private static final double USUAL_EXPONENT = 1.2;

    public ChannelRule {
        Require.positive("channel rule", "pitch (m)", pitch);
        Require.within("channel rule", "width over pitch (-)", widthShare, 0.05, 0.95);
        Require.within("channel rule", "wall margin (-)", wallMargin, 0, 0.5);
        Require.within("channel rule", "height over width (-)", slenderness, 1, 100);
        Require.within("channel rule", "exponent of mass flux (-)", massFluxExponent, 0, 5);
    }

    /** The rule for a first estimate. */
    public static ChannelRule usual(double throatDiameter) {
        double pitch = REFERENCE_PITCH * Math.sqrt(throatDiameter / REFERENCE_DIAMETER);
        return new ChannelRule(Math.min(LARGEST_PITCH, Math.max(SMALLEST_PITCH, pitch)), 0.5, USUAL_EXPONENT, 0.1, 10);
    }
}
