package dev.penstock.cycles.sheet;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.cooling.design.JacketLoad;
import java.util.Optional;

/**
 * What an arrangement takes for granted while it is solved, and what is computed again from its solution: the chamber and
 * the jacket depend on the flows, and the flows on them.
 *
 * @param chamberFlow flow through the throat (kg/s)
 * @param faceRatio pressure at the injector face over nozzle stagnation pressure (-)
 * @param heatLoad heat taken up by the jacket (W)
 * @param jacketDrop pressure drop of the jacket (Pa)
 * @param chamber the chamber those follow from
 * @param jacket the jacket those follow from
 */
public record CarriedValues(
        double chamberFlow,
        double faceRatio,
        double heatLoad,
        double jacketDrop,
        ChamberPerformance chamber,
        Optional<JacketLoad> jacket) {

    public CarriedValues with(double newFlow, double newHeat, double newDrop) {
        return new CarriedValues(newFlow, faceRatio, newHeat, newDrop, chamber, jacket);
    }
}
