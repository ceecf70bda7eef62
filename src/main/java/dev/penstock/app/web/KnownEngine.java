package dev.penstock.app.web;

import dev.penstock.app.answer.EngineAnswer;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** A balanced engine and, once somebody asks, the trail of its numbers and its charts. */
final class KnownEngine {

    private final EngineBalance balance;
    private final Map<Drawn, List<Once>> charts = new ConcurrentHashMap<>();
    private Trail trail;

    /** What charts depend on beside the engine: the reader's units, and the engine that lies behind. */
    private record Drawn(UnitSystem units, Optional<KnownEngine> before) {}

    /** A chart that is drawn once, by whoever asks first; others wait for it. */
    private static final class Once {

        private final Supplier<Map<String, Object>> work;
        private Map<String, Object> drawn;

        Once(Supplier<Map<String, Object>> work) {
            this.work = work;
        }

        synchronized Map<String, Object> get() {
            if (drawn == null) {
                drawn = work.get();
            }
            return drawn;
        }
    }

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
     * @param wanted which of its charts, from zero; all if it is empty
     * @return these charts in the units of this thread's reader, drawn side by side and once, their places, and how many there are
     */
    Map<String, Object> charts(Optional<KnownEngine> before, List<Integer> wanted) {
        List<Once> all = charts.computeIfAbsent(
                new Drawn(UnitSystem.chosen(), before),
                drawn -> EngineAnswer.charts(balance, before.map(KnownEngine::balance)).stream()
                        .map(Once::new)
                        .toList());
        List<Integer> places = IntStream.range(0, all.size())
                .filter(i -> wanted.isEmpty() || wanted.contains(i))
                .boxed()
                .toList();
        return Map.of(
                "of",
                all.size(),
                "places",
                places,
                "figures",
                places.parallelStream().map(i -> all.get(i).get()).toList());
    }
}
