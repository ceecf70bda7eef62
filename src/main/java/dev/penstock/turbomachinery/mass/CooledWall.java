package dev.penstock.turbomachinery.mass;

import dev.penstock.errors.Require;

/**
 * Wall that one jacket cools, without the shell that holds the chamber's pressure.
 * <pre>
 * tubes of wall s and inner diameter d, side by side:  w = 1.1 π ρ s (d + s)/(d + 2s),  ρ 8000 kg/m³, a tenth for the braze
 * liner and channels:                                  w = 12 kg/m²
 * </pre>
 * A tube of 0.33 mm gives 8 to 9 kg/m²; flattening does not change its girth. The tenth and the 12 kg/m² are common practice without a source.
 *
 * @param from where its jacket begins, from the throat, negative upstream (m)
 * @param to where it ends (m)
 * @param perArea mass over the area of the gas side (kg/m²)
 */
public record CooledWall(double from, double to, double perArea) {

    /** Liner and channels (kg/m²). */
    static final double LINER = 12;

    private static final double BRAZE = 1.1;

    public CooledWall {
        Require.finite("cooled wall", "beginning (m)", from);
        Require.finite("cooled wall", "end (m)", to);
        Require.positive("cooled wall", "mass per area (kg/m²)", perArea);
    }

    /**
     * @param from where its jacket begins (m)
     * @param to where it ends (m)
     * @return a wall of liner and channels
     */
    public static CooledWall lined(double from, double to) {
        return new CooledWall(from, to, LINER);
    }

    /**
     * @param from where its jacket begins (m)
     * @param to where it ends (m)
     * @param thickness of a tube's wall (m)
     * @param diameter inner diameter of a tube (m)
     * @return a wall of tubes
     */
    public static CooledWall tubes(double from, double to, double thickness, double diameter) {
        Require.positive("cooled wall", "tube wall (m)", thickness);
        Require.positive("cooled wall", "tube diameter (m)", diameter);
        double girthOverPitch = Math.PI * (diameter + thickness) / (diameter + 2 * thickness);
        return new CooledWall(from, to, BRAZE * EngineMetal.DENSITY * thickness * girthOverPitch);
    }

    /** Distance of a place from this wall along the axis (m); zero on it. */
    double distance(double x) {
        return Math.max(0, Math.max(from - x, x - to));
    }
}
