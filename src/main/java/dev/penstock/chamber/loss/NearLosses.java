package dev.penstock.chamber.loss;

import dev.penstock.chamber.flow.NearExpansion;
import dev.penstock.combustion.equilibrium.EquilibriumMark;

/**
 * Where the losses of a chamber have come by, for those of nearly the same chamber to start from ({@link NearExpansion}).
 */
public final class NearLosses {

    private final NearExpansion core = new NearExpansion();
    private final NearExpansion outer = new NearExpansion();
    private final NearExpansion film = new NearExpansion();
    private final EquilibriumMark freezing = new EquilibriumMark();

    /** Pressure (Pa) and temperature (K) at the exit of a flow that has frozen on the way; 0 as long as nothing is known. */
    private double frozenPressure;

    private double frozenTemperature;

    NearExpansion core() {
        return core;
    }

    /** @return expansion of the outer row */
    public NearExpansion outer() {
        return outer;
    }

    NearExpansion film() {
        return film;
    }

    EquilibriumMark freezing() {
        return freezing;
    }

    double frozenPressure() {
        return frozenPressure;
    }

    double frozenTemperature() {
        return frozenTemperature;
    }

    void foundFrozenExit(double pressure, double temperature) {
        frozenPressure = pressure;
        frozenTemperature = temperature;
    }
}
