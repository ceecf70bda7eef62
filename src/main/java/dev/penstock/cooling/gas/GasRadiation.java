package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Radiation of steam and carbon dioxide to a cold wall, by Schack's fits.
 * <pre>
 * q_H2O = 4.07 p^0.8 L^0.6 [(T/100)³ − (T_w/100)³]        W/m², p in bar-like atmospheres, L in m
 * q_CO2 = 4.07 (p L)^(1/3) [(T/100)^3.5 − (T_w/100)^3.5]
 * </pre>
 * p partial pressure, L mean beam length, 0.9 of the local diameter. The sum is held below half of a black body's, since
 * the fits were made for furnaces near 1 bar. Soot is left out: a luminous kerosene flame radiates more. Source:
 * [schack-1965], constants from memory (3.5 kcal/(m² h) in the source's units).
 */
public final class GasRadiation {

    public static final ModelCard CARD = new ModelCard(
            "cooling.gas-radiation",
            "Radiation of steam and carbon dioxide, Schack",
            "q_H2O = 4.07 p^0.8 L^0.6 [(T/100)^3 - (Tw/100)^3], q_CO2 = 4.07 (pL)^(1/3) [(T/100)^3.5 - (Tw/100)^3.5]",
            "furnace gas near 1 bar; used here to rocket pressure with a bound at half a black body",
            "a factor of 2 at rocket pressures (own judgement)",
            List.of("schack-1965"));

    private static final double CONSTANT = 3.5 * 1.163;
    private static final double BEAM = 0.9;
    private static final double LARGEST_EMISSIVITY = 0.5;

    private GasRadiation() {}

    /**
     * @param steam partial pressure of steam (Pa)
     * @param carbonDioxide partial pressure of carbon dioxide (Pa)
     * @param diameter local diameter (m)
     * @param gasTemperature static temperature of the gas (K)
     * @param wallTemperature wall temperature (K)
     * @return flux into the wall (W/m²); zero where the wall is not colder than the gas
     */
    public static double flux(
            double steam, double carbonDioxide, double diameter, double gasTemperature, double wallTemperature) {
        if (!(wallTemperature < gasTemperature)) {
            return 0;
        }
        double beam = BEAM * diameter;
        double t = gasTemperature / 100;
        double w = wallTemperature / 100;
        double p = steam / Constants.STANDARD_ATMOSPHERE;
        double c = carbonDioxide / Constants.STANDARD_ATMOSPHERE;
        double water = CONSTANT * Math.pow(p, 0.8) * Math.pow(beam, 0.6) * (t * t * t - w * w * w);
        double dioxide = CONSTANT * Math.cbrt(c * beam) * (Math.pow(t, 3.5) - Math.pow(w, 3.5));
        double black = Constants.STEFAN_BOLTZMANN * (Math.pow(gasTemperature, 4) - Math.pow(wallTemperature, 4));
        return Math.min(water + dioxide, LARGEST_EMISSIVITY * black);
    }
}
