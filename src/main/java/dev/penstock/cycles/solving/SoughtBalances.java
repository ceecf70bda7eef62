package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.errors.PenstockException;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Balances of one concept at chamber pressures, by their own first guess or from a neighbour, each sought once: what a refusal names is
 * asked from rungs of the same ladder and along the same steps. A balance has no history, so what is kept is what would be found
 * again. Not thread-safe.
 */
final class SoughtBalances {

    private final Balancer balancer;
    private final Concept concept;
    private final Map<Double, Outcome> guessed = new HashMap<>();
    private final Map<Balancer.Solved, Map<Double, Outcome>> followed = new IdentityHashMap<>();

    /** A balance, or why there is none. */
    private record Outcome(Optional<Balancer.Solved> solved, Optional<PenstockException> failure) {

        Balancer.Solved get() {
            return solved.orElseThrow(failure::orElseThrow);
        }
    }

    SoughtBalances(Balancer balancer, Concept concept) {
        this.balancer = balancer;
        this.concept = concept;
    }

    /**
     * @param pressure chamber pressure (Pa)
     * @param near a balance to start from; none for the first guess
     * @return the balance at that pressure
     * @throws PenstockException if the start leads to none
     */
    Balancer.Solved solve(double pressure, Optional<Balancer.Solved> near) {
        Map<Double, Outcome> known = near.map(n -> followed.computeIfAbsent(n, start -> new HashMap<>()))
                .orElse(guessed);
        Outcome outcome = known.get(pressure);
        if (outcome == null) {
            outcome = sought(pressure, near);
            known.put(pressure, outcome);
        }
        return outcome.get();
    }

    private Outcome sought(double pressure, Optional<Balancer.Solved> near) {
        try {
            return new Outcome(
                    Optional.of(balancer.solve(concept.withChamberPressure(pressure), near)), Optional.empty());
        } catch (PenstockException e) {
            return new Outcome(Optional.empty(), Optional.of(e));
        }
    }
}
