package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;

/**
 * Where dumped turbine gas goes: through a nozzle of its own.
 *
 * @param areaRatio exit over throat area of the exhaust nozzle (-)
 * @param efficiency delivered over ideal thrust of it (-)
 * @param ductLoss pressure loss between turbine and nozzle over turbine exit pressure (-)
 */
public record ExhaustDesign(double areaRatio, double efficiency, double ductLoss) {

    public ExhaustDesign {
        Require.within("exhaust", "area ratio (-)", areaRatio, 1, 100);
        Require.within("exhaust", "efficiency (-)", efficiency, 0.1, 1);
        Require.within("exhaust", "duct loss (-)", ductLoss, 0, 0.9);
    }
}
