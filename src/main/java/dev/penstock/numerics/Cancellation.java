package dev.penstock.numerics;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Lets work end early, when somebody no longer wants its answer. The work runs under a question that says whether to stop;
 * every solver of this package asks it once per evaluation or search, so that any long calculation, whatever it is made of,
 * ends within the time of one of these. The question belongs to the thread that the work runs on.
 */
public final class Cancellation {

    private static final BooleanSupplier NEVER = () -> false;
    private static final ThreadLocal<BooleanSupplier> STOP = ThreadLocal.withInitial(() -> NEVER);

    private Cancellation() {}

    /**
     * @param stop whether to stop; asked often, so it must be quick
     * @param work work on this thread
     * @param <T> kind of answer
     * @return its answer
     * @throws CancellationException if it was stopped; what the work had open is then of no use any more
     */
    public static <T> T during(BooleanSupplier stop, Supplier<T> work) {
        BooleanSupplier outer = STOP.get();
        STOP.set(outer == NEVER ? stop : () -> stop.getAsBoolean() || outer.getAsBoolean());
        try {
            return work.get();
        } finally {
            STOP.set(outer);
        }
    }

    /** @return whether the work on this thread is to stop; to be handed to threads that work for it */
    public static BooleanSupplier current() {
        return STOP.get();
    }

    /** @throws CancellationException if the work on this thread is to stop */
    public static void check() {
        if (STOP.get().getAsBoolean()) {
            throw new CancellationException("the work was stopped");
        }
    }
}
