package dev.penstock.cooling.design;

import dev.penstock.errors.Require;

/**
 * Turbine gas that runs along the wall of the nozzle.
 *
 * @param areaRatio area ratio at which it enters (-)
 * @param massFlow flow of it in one nozzle (kg/s)
 * @param temperature total temperature (K)
 * @param heatCapacity cp (J/(kg·K))
 */
public record ExhaustFilm(double areaRatio, double massFlow, double temperature, double heatCapacity) {

    public ExhaustFilm {
        Require.within("exhaust film", "area ratio (-)", areaRatio, 1, 1e4);
        Require.positive("exhaust film", "flow (kg/s)", massFlow);
        Require.positive("exhaust film", "temperature (K)", temperature);
        Require.positive("exhaust film", "heat capacity (J/(kg·K))", heatCapacity);
    }
}
