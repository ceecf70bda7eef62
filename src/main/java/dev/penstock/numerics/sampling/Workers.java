package dev.penstock.numerics.sampling;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.IntConsumer;

/** Does independent pieces of work, on as many threads as it likes and in any order. */
@FunctionalInterface
public interface Workers {

    /** One after the other on the thread that asks. */
    Workers HERE = (count, work) -> {
        for (int i = 0; i < count; i++) {
            work.accept(i);
        }
    };

    /**
     * @param count number of pieces
     * @param work does one piece by its number; safe to call from several threads
     */
    void forEach(int count, IntConsumer work);

    /**
     * Does what it can: a piece that is stopped is left out, the others go on.
     *
     * @param count number of pieces
     * @param work does one piece by its number; safe to call from several threads
     * @return whether all pieces were done
     */
    default boolean untilStopped(int count, IntConsumer work) {
        AtomicBoolean whole = new AtomicBoolean(true);
        forEach(count, i -> {
            try {
                work.accept(i);
            } catch (CancellationException stopped) {
                whole.set(false);
            }
        });
        return whole.get();
    }
}
