package dev.penstock.vehicle.engine;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Mass of a pump-fed engine from thrust and area ratio.
 *
 * <pre>m = 7.81e-4 F + 3.37e-5 F √ε + 59</pre>
 *
 * m in kg, F vacuum thrust in N, ε nozzle area ratio. Source: [akin-mass]. Fitted to launch-vehicle engines; below about
 * 50 kN the constant dominates. Engines of equal thrust differ by a factor of up to two: a second published relation,
 * {@link #secondOpinion}, is half as heavy again at 1 MN.
 */
public final class EngineMassRelation {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.engine-mass",
            "Mass of a pump-fed engine",
            "m = 7.81e-4 F + 3.37e-5 F ε^0.5 + 59 (kg, N)",
            "pump-fed launch-vehicle engines, 50 kN to 10 MN",
            "±40 %: published relations differ by half at 1 MN",
            List.of("akin-mass", "humble-1995"));

    private EngineMassRelation() {}

    /**
     * @param vacuumThrust vacuum thrust (N)
     * @param areaRatio nozzle area ratio (-)
     * @return mass (kg)
     */
    public static double mass(double vacuumThrust, double areaRatio) {
        Require.positive("engine mass", "vacuum thrust (N)", vacuumThrust);
        Require.within("engine mass", "area ratio (-)", areaRatio, 1, 1000);
        return 7.81e-4 * vacuumThrust + 3.37e-5 * vacuumThrust * Math.sqrt(areaRatio) + 59;
    }

    /**
     * <pre>F/(m g0) = 25.2 log10(F) − 80.7</pre>
     *
     * Source: [humble-1995], from memory; 0.1 to 8 MN.
     *
     * @param vacuumThrust vacuum thrust (N)
     * @return thrust over weight (-)
     */
    public static double secondOpinion(double vacuumThrust) {
        Require.within("engine mass", "vacuum thrust (N)", vacuumThrust, 1e4, 1e8);
        return 25.2 * Math.log10(vacuumThrust) - 80.7;
    }
}
