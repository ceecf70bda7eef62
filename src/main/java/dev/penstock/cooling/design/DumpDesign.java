package dev.penstock.cooling.design;

import dev.penstock.errors.Require;

/**
 * A coolant that is dumped behind its jacket, at the end of the wall that it has cooled.
 *
 * @param pressureShare pressure before the jacket over chamber pressure (-)
 * @param areaRatio exit over throat area of the nozzles through which it leaves (-)
 * @param efficiency delivered over ideal thrust of them (-)
 */
public record DumpDesign(double pressureShare, double areaRatio, double efficiency) {

    public DumpDesign {
        Require.within("dumped coolant", "pressure over chamber pressure (-)", pressureShare, 1e-3, 1);
    }
}
