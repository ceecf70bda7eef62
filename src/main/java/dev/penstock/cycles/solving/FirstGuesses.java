package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.errors.PenstockException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Balances of one concept at chamber pressures by their own first guess, each sought once: what a refusal names is asked from rungs
 * of the same ladder. A balance has no history, so what is kept is what would be found again. Not thread-safe.
 */
final class FirstGuesses {

    private final Balancer balancer;
    private final Concept concept;
    private final Map<Double, Balancer.Solved> closed = new HashMap<>();
    private final Map<Double, PenstockException> failed = new HashMap<>();

    FirstGuesses(Balancer balancer, Concept concept) {
        this.balancer = balancer;
        this.concept = concept;
    }

    /**
     * @param pressure chamber pressure (Pa)
     * @return the balance there
     * @throws PenstockException if its first guess leads to none
     */
    Balancer.Solved solve(double pressure) {
        PenstockException failure = failed.get(pressure);
        if (failure != null) {
            throw failure;
        }
        Balancer.Solved known = closed.get(pressure);
        if (known == null) {
            known = sought(pressure);
            closed.put(pressure, known);
        }
        return known;
    }

    private Balancer.Solved sought(double pressure) {
        try {
            return balancer.solve(concept.withChamberPressure(pressure), Optional.empty());
        } catch (PenstockException e) {
            failed.put(pressure, e);
            throw e;
        }
    }
}
