package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.PenstockException;

/**
 * Finds a balance from afar: where the first guess is not good enough, the same concept is closed at other chamber pressures and
 * followed from there ({@link PressureSearch}), within a bound of work. A failure names the pressures between which it was seen.
 */
public final class PressureContinuation {

    /** Work at which a search ends, in the middle of an attempt if need be (about microseconds, see {@link SolvingWork}). */
    private static final long MOST_WORK = 800_000;

    /** Work after which no further attempt begins where many engines are asked for and one that is not found does not matter. */
    private static final long BRIEF_WORK = 90_000;

    private final Balancer balancer;

    public PressureContinuation(Balancer balancer) {
        this.balancer = balancer;
    }

    /**
     * @param concept what is asked for
     * @return its balance
     * @throws PenstockException if there is none, or none was found
     */
    public Balancer.Solved solve(Concept concept) {
        return solve(concept, MOST_WORK);
    }

    /**
     * The same within an eighth of the work: of those that close only from afar some are not found.
     *
     * @param concept what is asked for
     * @return its balance
     * @throws PenstockException if there is none, or none was found
     */
    public Balancer.Solved solveBriefly(Concept concept) {
        return solve(concept, BRIEF_WORK);
    }

    private Balancer.Solved solve(Concept concept, long lastStart) {
        SoughtBalances sought = new SoughtBalances(balancer, concept, lastStart, new SolvingWork(MOST_WORK));
        return sought.guess(concept.chamberPressure()).orElseGet(() -> fromAfar(sought));
    }

    private static Balancer.Solved fromAfar(SoughtBalances sought) {
        PenstockException first = sought.open().get(sought.target());
        if (first instanceof LimitReached
                || sought.concept().cycle().traits().closure() == CycleTraits.Closure.TANK_PRESSURE) {
            throw first;
        }
        PressureSearch search = new PressureSearch(sought);
        return search.find().orElseThrow(() -> PressureRefusal.of(search, sought));
    }

    /**
     * Follows a neighbouring solution to a concept, in steps that shrink where they fail.
     *
     * @throws PenstockException if that does not lead there
     */
    public Balancer.Solved follow(Concept concept, Balancer.Solved near) {
        SoughtBalances sought = new SoughtBalances(balancer, concept, Long.MAX_VALUE, SolvingWork.unbounded());
        return new PressureWalk(sought).from(near).orElseThrow(sought::lastFailure);
    }
}
