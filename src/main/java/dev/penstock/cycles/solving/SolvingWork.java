package dev.penstock.cycles.solving;

import dev.penstock.cycles.sheet.BalanceModels;
import dev.penstock.numerics.Cancellation;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;

/**
 * Work done on balances, those included that failed, counted in what costs time: what a search may spend is bounded by it, and so
 * depends neither on the machine nor on what else runs there. An attempt is ended inside, at the next question of a solver whether to
 * go on ({@link Cancellation}), once the bound is reached. Not thread-safe.
 * <pre>
 * work = 400 evaluations + 0.35 states of coolants in marches + 15 states of heated propellants in turbines + 60 equilibria
 * </pre>
 * A dear state counts as several. The weights are about microseconds of one processor of 2026, fitted to the processor time of slow
 * random engines of every kind.
 */
final class SolvingWork {

    static final long EVALUATION = 400;
    private static final double COOLANT_STATE = 0.35;
    private static final long HEATED_STATE = 15;
    private static final long EQUILIBRIUM = 60;

    private final long most;
    private long spent;

    /** @param most work at which an attempt is ended */
    SolvingWork(long most) {
        this.most = most;
    }

    /** @return work without a bound */
    static SolvingWork unbounded() {
        return new SolvingWork(Long.MAX_VALUE);
    }

    /**
     * Counts what one attempt at a balance takes, also where it fails.
     *
     * @param models what counts
     * @param attempt the attempt
     * @param <T> kind of answer
     * @return its answer
     * @throws CancellationException if it was ended at the bound, or stopped by somebody else
     */
    <T> T count(BalanceModels models, Supplier<T> attempt) {
        try {
            return most == Long.MAX_VALUE
                    ? attempt.get()
                    : Cancellation.during(() -> spent + of(models) >= most, attempt);
        } finally {
            spent += of(models);
        }
    }

    private static long of(BalanceModels models) {
        return EVALUATION * models.evaluations()
                + HEATED_STATE * models.heatedEffort()
                + (long) (COOLANT_STATE * models.jackets().work())
                + EQUILIBRIUM * models.equilibria();
    }

    /** @return work so far */
    long spent() {
        return spent;
    }

    /** @return whether the bound is reached */
    boolean ended() {
        return spent >= most;
    }
}
