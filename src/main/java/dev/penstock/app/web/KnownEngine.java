package dev.penstock.app.web;

import dev.penstock.app.answer.EngineAnswer;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.UnitSystem;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** A balanced engine and, once somebody asks, the trail of its numbers and its charts. */
final class KnownEngine {

    private final EngineBalance balance;
    private final Map<Drawn, Map<String, Object>> charts = new ConcurrentHashMap<>();
    private Trail trail;

    /** What charts depend on beside the engine: the reader's units, and the engine that lies behind. */
    private record Drawn(UnitSystem units, Optional<KnownEngine> before) {}

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

    /**
     * @param before the engine without its changes, if it has any and closes without them
     * @return its charts in the units of this thread's reader, drawn once
     */
    Map<String, Object> charts(Optional<KnownEngine> before) {
        return charts.computeIfAbsent(
                new Drawn(UnitSystem.chosen(), before),
                drawn -> EngineAnswer.charts(balance, before.map(KnownEngine::balance)));
    }
}
