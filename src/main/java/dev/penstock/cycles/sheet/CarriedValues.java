package dev.penstock.cycles.sheet;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.cooling.design.JacketLoad;
import java.util.List;
import java.util.Optional;

/**
 * What an arrangement takes for granted while it is solved, and what is computed again from its solution: the chamber and
 * the jackets depend on the flows, and the flows on them.
 *
 * @param chamberFlow flow through the throats of all chambers (kg/s)
 * @param faceRatio pressure at the injector face over nozzle stagnation pressure (-)
 * @param seaLevelShare thrust of the chamber at sea level over that in vacuum (-); one where none is asked for there
 * @param jackets jackets, in the order of the concept's circuits
 * @param chamber the chamber those follow from, one of them where there are several
 */
public record CarriedValues(
        double chamberFlow, double faceRatio, double seaLevelShare, List<Jacket> jackets, ChamberPerformance chamber) {

    /**
     * The same of one cooling circuit.
     *
     * @param heatLoad heat taken up by the jackets of all chambers (W)
     * @param pressureDrop pressure drop of the jacket (Pa)
     * @param load the jacket of one chamber that those follow from; empty before it is known
     */
    public record Jacket(double heatLoad, double pressureDrop, Optional<JacketLoad> load) {

        /** The same jacket with other numbers. */
        public Jacket with(double newHeat, double newDrop) {
            return new Jacket(newHeat, newDrop, load);
        }
    }

    public CarriedValues {
        jackets = List.copyOf(jackets);
    }

    /** The same with other numbers. */
    public CarriedValues with(double newFlow, double newFaceRatio, double newShare, List<Jacket> newJackets) {
        return new CarriedValues(newFlow, newFaceRatio, newShare, newJackets, chamber);
    }

    /** The same around another chamber. */
    public CarriedValues around(ChamberPerformance newest) {
        return new CarriedValues(chamberFlow, faceRatio, seaLevelShare, jackets, newest);
    }

    /** Heat taken up by all jackets (W). */
    public double heatLoad() {
        double sum = 0;
        for (Jacket jacket : jackets) {
            sum += jacket.heatLoad();
        }
        return sum;
    }
}
