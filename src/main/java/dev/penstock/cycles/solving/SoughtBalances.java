package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.CarriedValues;
import dev.penstock.errors.ConservationViolated;
import dev.penstock.errors.FailureSubject;
import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;

/**
 * Balances of one concept at chamber pressures, by their own first guess or from a neighbour, each sought once: a balance has no
 * history, so what is kept is what would be found again. Knows which pressures closed, which were tried in vain, and whether the
 * work that a search may take is spent; from then on nothing more is sought. Not thread-safe.
 */
final class SoughtBalances {

    private final Balancer balancer;
    private final Concept concept;
    private final double target;
    private final long lastStart;
    private final SolvingWork work;
    private final Map<Double, Optional<Balancer.Solved>> guessed = new HashMap<>();
    private final Map<Balancer.Solved, Map<Double, Optional<Balancer.Solved>>> followed = new IdentityHashMap<>();
    private final NavigableMap<Double, Balancer.Solved> closed = new TreeMap<>();
    private final NavigableMap<Double, PenstockException> open = new TreeMap<>();
    private PenstockException lastFailure;

    /**
     * @param lastStart work after which no further attempt begins
     * @param work counts; its bound ends an attempt
     */
    SoughtBalances(Balancer balancer, Concept concept, long lastStart, SolvingWork work) {
        this.balancer = balancer;
        this.concept = concept;
        this.target = concept.chamberPressure();
        this.lastStart = lastStart;
        this.work = work;
    }

    Concept concept() {
        return concept;
    }

    /** @return what is taken for granted at the pressure asked for before anything is solved; nothing if that cannot be computed */
    Optional<CarriedValues> firstGuess() {
        try {
            return Optional.of(balancer.firstGuess(concept));
        } catch (PenstockException e) {
            return Optional.empty();
        }
    }

    /** @return the pressure asked for (Pa) */
    double target() {
        return target;
    }

    /** @return pressures that closed, and their balances */
    NavigableMap<Double, Balancer.Solved> closed() {
        return closed;
    }

    /** @return pressures tried in vain, and why the last try of each failed */
    NavigableMap<Double, PenstockException> open() {
        return open;
    }

    /** @return why the last attempt that failed did so; there must have been one */
    PenstockException lastFailure() {
        return lastFailure;
    }

    /** @return whether the work is spent */
    boolean exhausted() {
        return work.spent() >= lastStart;
    }

    /**
     * @param pressure chamber pressure (Pa)
     * @return the balance there by its own first guess; nothing if that leads to none
     */
    Optional<Balancer.Solved> guess(double pressure) {
        return sought(guessed, pressure, Optional.empty());
    }

    /**
     * @param pressure chamber pressure (Pa)
     * @param near a balance to start from
     * @return the balance there; nothing if that start leads to none
     */
    Optional<Balancer.Solved> follow(double pressure, Balancer.Solved near) {
        return sought(followed.computeIfAbsent(near, n -> new HashMap<>()), pressure, Optional.of(near));
    }

    private Optional<Balancer.Solved> sought(
            Map<Double, Optional<Balancer.Solved>> known, double pressure, Optional<Balancer.Solved> near) {
        Optional<Balancer.Solved> before = known.get(pressure);
        if (before != null) {
            return before;
        }
        if (exhausted()) {
            return Optional.empty();
        }
        Optional<Balancer.Solved> found = attempt(pressure, near);
        known.put(pressure, found);
        return found;
    }

    private Optional<Balancer.Solved> attempt(double pressure, Optional<Balancer.Solved> near) {
        try {
            Concept there = pressure == target ? concept : concept.withChamberPressure(pressure);
            Balancer.Solved solved = balancer.solve(there, near, work);
            closed.put(pressure, solved);
            open.remove(pressure);
            return Optional.of(solved);
        } catch (ConservationViolated e) {
            throw e;
        } catch (PenstockException e) {
            if (e instanceof InvalidInput && pressure == target) {
                throw e;
            }
            lastFailure = e;
            if (!closed.containsKey(pressure)) {
                open.put(pressure, e);
            }
            return Optional.empty();
        } catch (CancellationException e) {
            if (!work.ended()) {
                throw e; // stopped by who asked
            }
            if (!closed.containsKey(pressure)) {
                open.putIfAbsent(
                        pressure,
                        NotConverged.outOfWork(
                                FailureSubject.BALANCE, concept.cycle().title() + " balance"));
            }
            return Optional.empty();
        }
    }
}
