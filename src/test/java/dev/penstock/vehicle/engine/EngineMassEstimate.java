package dev.penstock.vehicle.engine;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Mass of a pump-fed engine: the published relation, corrected for chamber pressure and for hydrogen.
 *
 * <pre>m = m_relation (1.10 + 0.20 [hydrogen] + 0.012 max(0, p_c − 7))</pre>
 *
 * p_c in MPa. The relation of {@link EngineMassRelation} is 4 to 34 % low against the ten built engines whose mass, thrust
 * and area ratio are in the table of the tests; most so for hydrogen, whose pumps are large, and for high pressure. The
 * correction is our own fit to those ten, and nothing else: mean error 2 %, standard deviation 11 %.
 */
public final class EngineMassEstimate {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.engine-mass-estimate",
            "Mass of a pump-fed engine, corrected",
            "m = m_relation (1.10 + 0.20 [hydrogen] + 0.012 max(0, p_c/MPa − 7))",
            "pump-fed engines, 70 kN to 8 MN, 3 to 27 MPa, area ratio 10 to 130",
            "standard deviation 11 % over the ten engines it was fitted to",
            List.of("akin-mass", "built-engines"));

    private EngineMassEstimate() {}

    /**
     * @param vacuumThrust vacuum thrust (N)
     * @param areaRatio nozzle area ratio (-)
     * @param chamberPressure chamber pressure (Pa)
     * @param hydrogen whether the fuel is hydrogen
     * @return mass (kg)
     */
    public static double mass(double vacuumThrust, double areaRatio, double chamberPressure, boolean hydrogen) {
        Require.positive("engine mass", "chamber pressure (Pa)", chamberPressure);
        double correction = 1.10 + (hydrogen ? 0.20 : 0) + 0.012 * Math.max(0, chamberPressure / 1e6 - 7);
        return correction * EngineMassRelation.mass(vacuumThrust, areaRatio);
    }
}
