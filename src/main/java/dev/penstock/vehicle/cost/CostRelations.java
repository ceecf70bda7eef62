package dev.penstock.vehicle.cost;

import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Effort to build the first unit over its dry mass.
 * <pre>
 * engine on pumps   5.16 m^0.45 work-years       m in kg
 * stage, engines aside   1.30 m^0.65 work-years
 * </pre>
 * Source: regressions over launch-vehicle hardware of the 1960s to 1990s [koelle-2003], from memory, exponents and
 * coefficients alike; those of cryogenic engines and stages, used for all propellants. Single points scatter about such lines by a
 * factor of two, which is the least that {@link #BAND} may be.
 */
public final class CostRelations {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "vehicle.first-unit-effort",
            "Effort to build the first unit",
            "engine 5.16 m^0.45, stage 1.30 m^0.65 work-years",
            "expendable hardware of launch vehicles of the last century: engines 100 to 10000 kg, stages 1 to 200 t",
            "a factor of two at least, and of five for new ways of building",
            List.of("koelle-2003"));

    /** Factor that the effort may be off, up or down (-). */
    public static final double BAND = 2.5;

    private CostRelations() {}

    /**
     * @param mass dry mass of one engine (kg)
     * @return effort to build the first (work-years)
     */
    public static double engine(double mass) {
        return 5.16 * Math.pow(mass, 0.45);
    }

    /**
     * @param mass dry mass of the stage without engines (kg)
     * @return effort to build the first (work-years)
     */
    public static double stage(double mass) {
        return 1.30 * Math.pow(mass, 0.65);
    }
}
