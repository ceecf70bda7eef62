package dev.penstock.turbomachinery.pump;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Suction capability and size of an inducer from its flow coefficient, by Brumfield's optimum blade cavitation number.
 * <pre>
 * k   = 2φ²/(1 - 2φ²)
 * Ss' = √(πφ) 2^0.75 / [φ² + k(1 + φ²)]^0.75,   Ss = Ss' √(1 - ν²)
 * D1  = [8Q/(π φ ω (1 - ν²))]^(1/3)
 * </pre>
 * φ is axial velocity over tip speed, ν hub over tip diameter; Ss = ω√Q/(g·NPSH)^0.75 is dimensionless, 2733 times smaller than
 * in rpm, gpm and ft.
 */
public final class InducerSuction {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.inducer-suction",
            "Suction specific speed of an inducer",
            "Ss = √(1-ν²) √(πφ) 2^0.75 / [φ² + k(1+φ²)]^0.75, k = 2φ²/(1-2φ²); D1 = [8Q/(πφω(1-ν²))]^(1/3)",
            "φ 0.05 to 0.3 without thermodynamic suppression",
            "built inducers reach 0.6 to 1.1 of it (from memory)",
            List.of("nasa-sp-8052"));

    private InducerSuction() {}

    /**
     * @param flowCoefficient φ (-), below 0.7
     * @param hubRatio ν (-), below 1
     * @return ω√Q/(g·NPSH)^0.75 (-)
     * @throws dev.penstock.errors.OutsideValidity if an argument is out of range
     */
    public static double suctionSpecificSpeed(double flowCoefficient, double hubRatio) {
        double phi2 = square(Require.within(CARD.id(), "flow coefficient (-)", flowCoefficient, 1e-3, 0.7));
        double nu = Require.within(CARD.id(), "hub ratio (-)", hubRatio, 0, 0.95);
        double k = 2 * phi2 / (1 - 2 * phi2);
        double full = Math.sqrt(Math.PI * flowCoefficient) * Math.pow(2, 0.75) / Math.pow(phi2 + k * (1 + phi2), 0.75);
        return full * Math.sqrt(1 - nu * nu);
    }

    /**
     * @param volumeFlow at the inlet (m³/s)
     * @param speed shaft speed (rad/s)
     * @param flowCoefficient φ (-)
     * @param hubRatio ν (-)
     * @return tip diameter (m)
     */
    public static double diameter(double volumeFlow, double speed, double flowCoefficient, double hubRatio) {
        Require.positive(CARD.id(), "volume flow (m³/s)", volumeFlow);
        Require.positive(CARD.id(), "speed (rad/s)", speed);
        return Math.cbrt(8 * volumeFlow / (Math.PI * flowCoefficient * speed * (1 - square(hubRatio))));
    }

    private static double square(double x) {
        return x * x;
    }
}
