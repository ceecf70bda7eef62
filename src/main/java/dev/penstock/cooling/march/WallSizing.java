package dev.penstock.cooling.march;

import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.WallMaterial;

/** Wall dimensions that a design leaves open. Rules of our own within common practice, no source. */
public final class WallSizing {

    private static final double CONDUCTIVE = 100;
    private static final double CONDUCTIVE_THICKNESS = 0.8e-3;
    private static final double RESISTIVE_THICKNESS = 0.5e-3;
    private static final double TUBE_THICKNESS = 0.35e-3;
    private static final double LARGEST_SHARE_OF_RADIUS = 0.25;
    private static final double TYPICAL_TEMPERATURE = 600;

    private WallSizing() {}

    /**
     * Thickness between gas and channel floor: 0.8 mm in a copper alloy, 0.5 mm in steel and nickel alloys, 0.35 mm in a
     * tube, at most a quarter of the throat radius.
     *
     * @param design design
     * @param material inner wall's material
     * @param throatRadius throat radius (m)
     * @return thickness (m)
     */
    public static double thickness(JacketDesign design, WallMaterial material, double throatRadius) {
        if (design.wall().thickness().isPresent()) {
            return design.wall().thickness().getAsDouble();
        }
        double usual = material.conductivity().at(TYPICAL_TEMPERATURE) > CONDUCTIVE
                ? CONDUCTIVE_THICKNESS
                : RESISTIVE_THICKNESS;
        double chosen = design.channels().kind() == ChannelKind.TUBE ? TUBE_THICKNESS : usual;
        return Math.min(chosen, LARGEST_SHARE_OF_RADIUS * throatRadius);
    }
}
