package dev.penstock.turbomachinery.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Mass of pump-fed engines from thrust, by two relations that differ by half at 1 MN: both are shown beside the sum of the parts.
 * <pre>
 * m = 7.81e-4 F + 3.37e-5 F √ε + 59             [akin-mass]
 * F/(m g) = 25.2 lg F - 80.7                    [humble-1995]
 * </pre>
 */
public final class WholeEngineRelations {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.whole-engine-mass",
            "Engine mass from thrust",
            "m = 7.81e-4 F + 3.37e-5 F √ε + 59; F/(m g) = 25.2 lg F - 80.7",
            "pump-fed engines; the second from 0.1 to 8 MN",
            "the two differ by half at 1 MN",
            List.of("akin-mass", "humble-1995"));

    private static final double LEAST_THRUST = 1e5;
    private static final double GREATEST_THRUST = 8e6;
    private static final double SCATTER = 0.35;

    private WholeEngineRelations() {}

    /**
     * @param vacuumThrust F (N)
     * @param areaRatio ε (-)
     * @return mass (kg)
     * @throws dev.penstock.errors.OutsideValidity if an argument is not positive
     */
    public static double linear(double vacuumThrust, double areaRatio) {
        Require.positive(CARD.id(), "vacuum thrust (N)", vacuumThrust);
        Require.positive(CARD.id(), "area ratio (-)", areaRatio);
        return 7.81e-4 * vacuumThrust + 3.37e-5 * vacuumThrust * Math.sqrt(areaRatio) + 59;
    }

    /**
     * @param vacuumThrust F (N), 0.1 to 8 MN
     * @return mass (kg)
     * @throws dev.penstock.errors.OutsideValidity if the thrust is out of range
     */
    public static double logarithmic(double vacuumThrust) {
        Require.within(CARD.id(), "vacuum thrust (N)", vacuumThrust, LEAST_THRUST, GREATEST_THRUST);
        double ratio = 25.2 * Math.log10(vacuumThrust) - 80.7;
        return vacuumThrust / (ratio * Constants.STANDARD_GRAVITY);
    }

    /**
     * @param vacuumThrust F (N)
     * @param areaRatio ε (-)
     * @return what the relations say that hold at that thrust
     */
    public static List<MassItem> of(double vacuumThrust, double areaRatio) {
        MassItem linear = item("linear in thrust", linear(vacuumThrust, areaRatio), "akin-mass");
        return vacuumThrust >= LEAST_THRUST && vacuumThrust <= GREATEST_THRUST
                ? List.of(linear, item("thrust to weight over thrust", logarithmic(vacuumThrust), "humble-1995"))
                : List.of(linear);
    }

    private static MassItem item(String name, double mass, String source) {
        return new MassItem(
                MassPart.WHOLE, name, name, new Spread(mass * (1 - SCATTER), mass, mass * (1 + SCATTER)), source);
    }
}
