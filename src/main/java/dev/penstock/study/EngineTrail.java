package dev.penstock.study;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Trail;

/** The trail of an engine with the figures by which engines are compared: the largest, the sum, the tightest of several. */
public final class EngineTrail {

    private EngineTrail() {}

    /**
     * @param balance balanced engine
     * @return the trail of all its numbers and figures
     */
    public static Trail of(EngineBalance balance) {
        Trail trail = BalanceTrail.of(balance);
        EngineFigures.EXTREMES.record(balance, Place.at("figures"), trail);
        return trail;
    }
}
