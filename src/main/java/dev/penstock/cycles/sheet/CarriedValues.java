package dev.penstock.cycles.sheet;

import dev.penstock.chamber.ChamberPerformance;
import java.util.List;

/**
 * What an arrangement takes for granted while it is solved, and what is computed again from its solution: the chamber and
 * the jackets depend on the flows, and the flows on them.
 *
 * @param chamberFlow flow through the throat (kg/s)
 * @param faceRatio pressure at the injector face over nozzle stagnation pressure (-)
 * @param jackets jackets, in the order of the concept's circuits
 * @param chamber the chamber those follow from
 */
public record CarriedValues(
        double chamberFlow, double faceRatio, List<CarriedJacket> jackets, ChamberPerformance chamber) {

    public CarriedValues {
        jackets = List.copyOf(jackets);
    }

    public CarriedValues with(double newFlow, List<CarriedJacket> newJackets) {
        return new CarriedValues(newFlow, faceRatio, newJackets, chamber);
    }

    /** Heat taken up by all jackets (W). */
    public double heatLoad() {
        double sum = 0;
        for (CarriedJacket jacket : jackets) {
            sum += jacket.heatLoad();
        }
        return sum;
    }
}
