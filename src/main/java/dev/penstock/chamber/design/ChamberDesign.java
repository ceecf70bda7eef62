package dev.penstock.chamber.design;

import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;

/**
 * What a concept says about its thrust chamber.
 *
 * @param chamberPressure stagnation pressure at the nozzle entrance (Pa); the injector face sees a little more
 * @param combustor combustor
 * @param nozzle nozzle
 * @param expansion what the composition does in the ideal expansion from which losses are taken
 * @param efficiencies efficiencies that the concept states
 */
public record ChamberDesign(
        double chamberPressure,
        CombustorDesign combustor,
        NozzleDesign nozzle,
        ExpansionMode expansion,
        Efficiencies efficiencies) {

    public ChamberDesign {
        Require.positive("chamber", "chamber pressure (Pa)", chamberPressure);
        double limit = chamberPressure;
        nozzle.exitPressure().ifPresent(p -> {
            if (!(p < limit)) {
                throw new OutsideValidity("nozzle", "exit pressure (Pa)", p, "below the chamber pressure " + limit);
            }
        });
    }

    /**
     * @param injector main injector
     * @return this design with that injector
     */
    public ChamberDesign withInjector(InjectorDesign injector) {
        return new ChamberDesign(chamberPressure, combustor.withInjector(injector), nozzle, expansion, efficiencies);
    }

    /**
     * @param pressure chamber pressure (Pa)
     * @return this design at another chamber pressure
     */
    public ChamberDesign withChamberPressure(double pressure) {
        return new ChamberDesign(pressure, combustor, nozzle, expansion, efficiencies);
    }
}
