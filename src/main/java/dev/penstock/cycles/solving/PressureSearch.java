package dev.penstock.cycles.solving;

import dev.penstock.errors.LimitReached;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.PenstockException;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Looks for one balance from the rungs of {@link PressureLadder}: the nearest that closes on either side is followed by
 * {@link PressureWalk}; a walk from further away ends where the nearer one did. The ladder goes down to the first rung that ends at a
 * limit: what sets it (no pump is needed, the coolant leaves what its properties are known for) holds all the more below. If no walk
 * arrives, pressures between are tried by their own first guess where the guesses around them came near; what closes there is followed
 * in turn. The next pressure behind the last that closes is then asked in every way in which a question for it alone would ask it; if it
 * closes, the walk goes on from there. So the sentence of a refusal needs no search of its own.
 */
final class PressureSearch {

    private static final int MOST_WALKS = 3;

    /** Largest scaled residual that a first guess may end with for others nearby to be tried (-). */
    private static final double NEARLY = 0.2;

    private final SoughtBalances sought;
    private final PressureWalk walk;
    private final double target;

    /** Scaled residuals that rungs ended with (-); nothing where they close or failed otherwise. */
    private final NavigableMap<Double, Double> misses = new TreeMap<>();

    private OptionalDouble end = OptionalDouble.empty();

    PressureSearch(SoughtBalances sought) {
        this.sought = sought;
        this.walk = new PressureWalk(sought);
        this.target = sought.target();
    }

    /** A solution at the target, from solutions elsewhere. */
    Optional<Balancer.Solved> find() {
        Optional<Balancer.Solved> found = fromRungs();
        for (int round = 0; found.isEmpty() && round < MOST_WALKS; round++) {
            Optional<Balancer.Solved> further = beyondGap().or(this::atEnd);
            if (further.isEmpty()) {
                break;
            }
            found = walk.from(further.get());
        }
        return found;
    }

    /**
     * @return the pressure next to the last that closes, towards the target, that was tried in vain in every way in which a question
     *     for it alone would try (Pa); nothing if there is none, or if the work was spent before
     */
    OptionalDouble end() {
        return sought.exhausted() ? OptionalDouble.empty() : end;
    }

    private Optional<Balancer.Solved> fromRungs() {
        boolean doneBelow = false;
        boolean doneAbove = false;
        for (double rung : PressureLadder.around(target)) {
            boolean below = rung < target;
            if (rung == target || (below ? doneBelow : doneAbove)) {
                continue;
            }
            Optional<Balancer.Solved> start = sought.guess(rung);
            PenstockException failure = sought.open().get(rung);
            misses.put(rung, miss(failure));
            doneBelow |= below && (start.isPresent() || failure instanceof LimitReached);
            doneAbove |= !below && start.isPresent();
            Optional<Balancer.Solved> arrived = start.flatMap(walk::from);
            if (arrived.isPresent()) {
                return arrived;
            }
        }
        return Optional.empty();
    }

    /** The highest pressure between the last that closes and the target that closes by its own first guess. */
    private Optional<Balancer.Solved> beyondGap() {
        Double reached = sought.closed().lowerKey(target);
        if (reached == null) {
            return Optional.empty();
        }
        return PressureLadder.between(reached, target).stream()
                .filter(p -> expectedMiss(p) <= NEARLY)
                .flatMap(p -> sought.guess(p).stream())
                .findFirst();
    }

    /** The next pressure behind the last that closes, if it closes after all. */
    private Optional<Balancer.Solved> atEnd() {
        Double below = sought.closed().lowerKey(target);
        Double above = sought.closed().higherKey(target);
        Double next = below != null
                ? sought.open().higherKey(below)
                : above != null ? sought.open().lowerKey(above) : null;
        if (next == null || next == target) {
            return Optional.empty();
        }
        Optional<Balancer.Solved> found = walk.again(next);
        end = found.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(next);
        return found;
    }

    /** What a first guess would end with, from the rungs below and above. */
    private double expectedMiss(double pressure) {
        var below = misses.floorEntry(pressure);
        var above = misses.ceilingEntry(pressure);
        if (below == null || above == null) {
            return 0;
        }
        double span = Math.log(above.getKey() / below.getKey());
        double share = span == 0 ? 0 : Math.log(pressure / below.getKey()) / span;
        return (1 - share) * below.getValue() + share * above.getValue();
    }

    private static double miss(PenstockException failure) {
        return failure instanceof NotConverged stalled && Double.isFinite(stalled.worstResidual())
                ? stalled.worstResidual()
                : 0;
    }
}
