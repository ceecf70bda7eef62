package dev.penstock.app.web;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.provenance.Trail;

/** A balanced engine and, once somebody asks, the trail of its numbers. */
final class KnownEngine {

    private final EngineBalance balance;
    private Trail trail;

    KnownEngine(EngineBalance balance) {
        this.balance = balance;
    }

    EngineBalance balance() {
        return balance;
    }

    /** @return the trail, made once; nobody writes into it afterwards */
    synchronized Trail trail() {
        if (trail == null) {
            trail = BalanceTrail.of(balance);
        }
        return trail;
    }
}
