package dev.penstock.cooling.gas;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Soot that a fuel-rich kerosene flame lays on the wall, as a thermal resistance.
 * <pre>R = R_7 min[1, (7 MPa/p_c)^1.5],   R_7 over the signed logarithm of area ratio: 5.7e-4 at −0.5, 3.8e-4 at 0, 5.1e-4 at 1.6 m²·K/W</pre>
 * The three points are those of the sample calculation in [nasa-sp-125] for oxygen and kerosene at 1000 psia and mixture
 * ratio 2.35 (1670, 1122 and 1500 in²·s·°F/Btu, from memory). The fall at higher pressure is our own: it keeps the
 * throat flux of 25 MPa kerosene engines in the order that is reported for them.
 */
public final class SootLayer {

    public static final ModelCard CARD = new ModelCard(
            "cooling.soot",
            "Soot on the wall of a kerosene chamber",
            "R = R_7 min[1, (7 MPa/pc)^1.5]; R_7 = 5.7e-4 upstream, 3.8e-4 throat, 5.1e-4 m2K/W at area ratio 5",
            "oxygen and kerosene, fuel-rich, p_c near 7 MPa",
            "±30 % at 7 MPa; a factor of 2 elsewhere (own judgement)",
            List.of("nasa-sp-125"));

    private static final double UNIT = 1 / 2.9437e6; // in²·s·°F/Btu in m²·K/W
    private static final double UPSTREAM = 1670 * UNIT;
    private static final double THROAT = 1122 * UNIT;
    private static final double DOWNSTREAM = 1500 * UNIT;
    private static final double UPSTREAM_PLACE = -Math.log(1.6);
    private static final double DOWNSTREAM_PLACE = Math.log(5);
    private static final double REFERENCE_PRESSURE = 1000 * 6894.757;

    private SootLayer() {}

    /**
     * @param place logarithm of the area ratio, negative upstream (-)
     * @param chamberPressure chamber pressure (Pa)
     * @return thermal resistance (m²·K/W)
     */
    public static double resistance(double place, double chamberPressure) {
        double end = place < 0 ? UPSTREAM : DOWNSTREAM;
        double fraction = Math.min(1, place / (place < 0 ? UPSTREAM_PLACE : DOWNSTREAM_PLACE));
        return (THROAT + fraction * (end - THROAT)) * Math.min(1, Math.pow(REFERENCE_PRESSURE / chamberPressure, 1.5));
    }
}
