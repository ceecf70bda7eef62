package dev.penstock.turbomachinery.pump;

import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;

/**
 * Specific and suction specific speed in their three customs.
 * <pre>Ωs = ω √Q/(Δh)^0.75 (dimensionless);  Ns = 2733 Ωs (rpm, gpm, ft);  nq = Ns/51.64 (1/min, m³/s, m)</pre>
 */
public final class SpecificSpeed {

    public static final ModelCard CARD = ModelCard.definition(
            "turbomachinery.specific-speed",
            "Specific speed of a stage",
            "Ωs = ω √Q/(Δh)^0.75",
            "everywhere; it is a definition");

    private static final double RPM = 30 / Math.PI;
    private static final double FOOT = 0.3048;
    private static final double US_GALLON_PER_MINUTE = 3.785411784e-3 / 60;

    private SpecificSpeed() {}

    /**
     * @param speed ω (rad/s)
     * @param volumeFlow Q (m³/s)
     * @param head of one stage, or g·NPSH (J/kg)
     * @return Ωs (-)
     */
    public static double of(double speed, double volumeFlow, double head) {
        return speed * Math.sqrt(volumeFlow) / Math.pow(head, 0.75);
    }

    /**
     * @param dimensionless Ωs (-)
     * @return Ns in rpm, gpm and ft
     */
    public static double inUsUnits(double dimensionless) {
        return dimensionless
                * RPM
                / Math.sqrt(US_GALLON_PER_MINUTE)
                * Math.pow(Constants.STANDARD_GRAVITY * FOOT, 0.75);
    }

    /**
     * @param dimensionless Ωs (-)
     * @return nq in 1/min, m³/s and m
     */
    public static double metric(double dimensionless) {
        return dimensionless * RPM * Math.pow(Constants.STANDARD_GRAVITY, 0.75);
    }
}
