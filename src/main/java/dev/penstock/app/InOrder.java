package dev.penstock.app;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Questions that come one after the other, answered over all processors and handed on in the order of the questions. A few are read
 * ahead; an answer is handed on as soon as it and all before it are there, whether or not another question comes.
 */
final class InOrder {

    /** Where questions come from. */
    @FunctionalInterface
    interface Source {

        /** @return the next question; empty at the end */
        Optional<String> next() throws IOException;
    }

    private InOrder() {}

    /**
     * @param source where questions come from
     * @param work answers one; asked by several threads
     * @param taken takes an answer, and says whether it wants more
     * @throws IOException if the source cannot be read
     */
    static <A> void answer(Source source, Function<String, A> work, Predicate<A> taken) throws IOException {
        int processors = Runtime.getRuntime().availableProcessors();
        BlockingQueue<Future<Optional<A>>> waiting = new ArrayBlockingQueue<>(2 * processors);
        // one thread reads
        ExecutorService pool = Executors.newFixedThreadPool(processors + 1, InOrder::daemon);
        pool.submit(() -> {
            waiting.put(read(source, work, waiting, pool));
            return true;
        });
        try {
            for (Optional<A> answer = waiting.take().get();
                    answer.isPresent() && taken.test(answer.get());
                    answer = waiting.take().get()) {}
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException unread) {
                throw unread;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    /** Reads to the end, and says how that was. */
    private static <A> Future<Optional<A>> read(
            Source source, Function<String, A> work, BlockingQueue<Future<Optional<A>>> waiting, ExecutorService pool)
            throws InterruptedException {
        try {
            for (Optional<String> next = source.next(); next.isPresent(); next = source.next()) {
                String question = next.get();
                waiting.put(pool.submit(() -> Optional.of(work.apply(question))));
            }
            return CompletableFuture.completedFuture(Optional.empty());
        } catch (IOException | RuntimeException e) {
            return CompletableFuture.failedFuture(e);
        }
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "penstock-answer");
        thread.setDaemon(true);
        return thread;
    }
}
