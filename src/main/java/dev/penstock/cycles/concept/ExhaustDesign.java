package dev.penstock.cycles.concept;

import dev.penstock.cooling.design.DumpDesign;
import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * Where dumped turbine gas goes: through a nozzle of its own, or through slots into the main nozzle.
 *
 * @param into area ratio of the main nozzle at which it is led in (-); empty where it has a nozzle of its own
 * @param areaRatio exit over throat area of the exhaust nozzle (-)
 * @param efficiency delivered over ideal thrust of it (-)
 * @param ductLoss pressure loss between turbine and nozzle over turbine exit pressure (-)
 * @param cant angle between its axis and that of the engine (rad)
 * @param swivel largest angle by which it is swivelled, for roll control (rad); zero where it is fixed
 */
public record ExhaustDesign(
        OptionalDouble into, double areaRatio, double efficiency, double ductLoss, double cant, double swivel) {

    private static final double MOST = Math.PI / 3;

    /** One that is fixed and points aft. */
    public ExhaustDesign(OptionalDouble into, double areaRatio, double efficiency, double ductLoss) {
        this(into, areaRatio, efficiency, ductLoss, 0, 0);
    }

    public ExhaustDesign {
        into.ifPresent(ratio -> Require.within("exhaust", "area ratio where it is led in (-)", ratio, 1, 1e4));
        Require.within("exhaust", "area ratio (-)", areaRatio, 1, 100);
        Require.within("exhaust", "efficiency (-)", efficiency, 0.1, 1);
        Require.within("exhaust", "duct loss (-)", ductLoss, 0, 0.9);
        Require.within("exhaust", "cant angle (rad)", cant, 0, MOST);
        Require.within("exhaust", "swivel angle (rad)", swivel, 0, MOST);
    }

    /** @return the nozzles through which a coolant is dumped at the end of its wall */
    public static ExhaustDesign dumping(DumpDesign dump) {
        return new ExhaustDesign(OptionalDouble.empty(), dump.areaRatio(), dump.efficiency(), 0);
    }
}
