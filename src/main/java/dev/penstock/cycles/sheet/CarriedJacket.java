package dev.penstock.cycles.sheet;

import dev.penstock.cooling.design.JacketLoad;
import java.util.Optional;

/**
 * What an arrangement takes for granted of one cooling circuit while it is solved.
 *
 * @param heatLoad heat taken up by the jacket (W)
 * @param pressureDrop pressure drop of the jacket (Pa)
 * @param load the jacket those follow from; empty before it is known
 */
public record CarriedJacket(double heatLoad, double pressureDrop, Optional<JacketLoad> load) {

    /** The same jacket with other numbers. */
    public CarriedJacket with(double newHeat, double newDrop) {
        return new CarriedJacket(newHeat, newDrop, load);
    }
}
