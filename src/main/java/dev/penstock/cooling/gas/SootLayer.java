package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Soot that a kerosene flame lays on the wall, as a thermal resistance.
 * <pre>
 * R_t = 5.5e-5 m²·K/W at 4.3 MPa, 4.9e-5 at 13.8 MPa, a power of pressure between, the end's beyond
 * R = R_t s/b,   b mixture ratio of the wall's zone over that of the chamber; s over the signed logarithm of area ratio: 1.49 at −ln 1.6, 1 at the throat, 1.34 at ln 5
 * </pre>
 * R_t is what a calorimeter chamber with a uniform mixture measured [nasa-tp-2862]: soot lowered the throat coefficient by 40 % at
 * 4.3 MPa and by 60 % at 13.8 MPa, R = (1/h) x/(1 − x), with the clean coefficient h from its 64 MW/m² at 8.87 MPa, pressure^0.8 and
 * a difference of 2950 K to the wall (ours). The shape s is that of the sample chamber in [nasa-sp-125] at 6.9 MPa and mixture ratio
 * 2.35 (1670, 1122 and 1500 in²·s·°F/Btu, from memory). The fall with b is our own, chosen so that the
 * fuel-rich outer zone of the calorimeter takes the published 47 % off its throat flux. That chamber's own deposit is {@link #TEXTBOOK_OVER_MEASURED} times as thick as
 * the calorimeter's: the two published values bound what is known, and the spread of the soot factor spans them.
 */
public final class SootLayer {

    /** Throat resistance of the sample chamber in [nasa-sp-125] over the measured one at its pressure (-). */
    public static final double TEXTBOOK_OVER_MEASURED = 7.3;

    /** Range of chamber pressure that was measured (Pa). */
    public static final double LOWEST_PRESSURE = 4.3e6;

    public static final double HIGHEST_PRESSURE = 13.8e6;

    public static final ModelCard CARD = new ModelCard(
            "cooling.soot",
            "Soot on the wall of a kerosene chamber",
            "R_t = 5.5e-5 (pc/4.3 MPa)^-0.1 m2K/W, 1.49 times upstream at area ratio 1.6, 1.34 times at area ratio 5",
            "oxygen and kerosene, uniform mixture, chamber pressure 4.3 to 13.8 MPa",
            "0.7 to 7.3 times: a textbook chamber of 6.9 MPa has 7.3 times as much",
            List.of("nasa-tp-2862", "nasa-sp-125"));

    private static final double AT_LOWEST = 5.5e-5;
    private static final double AT_HIGHEST = 4.9e-5;
    private static final double EXPONENT =
            Math.log(AT_HIGHEST / AT_LOWEST) / Math.log(HIGHEST_PRESSURE / LOWEST_PRESSURE);
    private static final double UPSTREAM = 1670.0 / 1122;
    private static final double DOWNSTREAM = 1500.0 / 1122;
    private static final double UPSTREAM_PLACE = -Math.log(1.6);
    private static final double DOWNSTREAM_PLACE = Math.log(5);

    private SootLayer() {}

    /**
     * @param place logarithm of the area ratio, negative upstream (-)
     * @param chamberPressure chamber pressure (Pa)
     * @return thermal resistance (m²·K/W)
     */
    public static double resistance(double place, double chamberPressure) {
        double measured = Math.max(LOWEST_PRESSURE, Math.min(HIGHEST_PRESSURE, chamberPressure));
        double throat = AT_LOWEST * Math.pow(measured / LOWEST_PRESSURE, EXPONENT);
        double end = place < 0 ? UPSTREAM : DOWNSTREAM;
        double fraction = Math.min(1, place / (place < 0 ? UPSTREAM_PLACE : DOWNSTREAM_PLACE));
        return throat * (1 + fraction * (end - 1));
    }

    /**
     * Soot of an outer zone over that of a uniform mixture: in inverse proportion to its mixture ratio.
     *
     * @param mixtureRatioBias mixture ratio of the zone over that of the chamber (-)
     * @return factor on the resistance (-)
     */
    public static double inMixture(double mixtureRatioBias) {
        return 1 / mixtureRatioBias;
    }

    /**
     * @param chamberPressure chamber pressure (Pa)
     * @return whether soot was measured at such a pressure
     */
    public static boolean measuredAt(double chamberPressure) {
        return chamberPressure >= LOWEST_PRESSURE && chamberPressure <= HIGHEST_PRESSURE;
    }
}
