package dev.penstock.numerics.sampling;

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
}
