package dev.penstock.study;

import dev.penstock.numerics.Cancellation;
import dev.penstock.numerics.sampling.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Does the same thing to many inputs over all processors and keeps their order. */
public final class Parallel {

    /** Workers on every processor. */
    public static final Workers WORKERS = (count, work) -> map(
            IntStream.range(0, count).boxed().toList(),
            i -> "",
            i -> {
                work.accept(i);
                return i;
            },
            Progress.NONE);

    private Parallel() {}

    /**
     * @param inputs inputs
     * @param name names an input for the progress
     * @param work what to do with each; must not share what is not thread-safe
     * @param progress told of each input that is done
     * @param <A> kind of input
     * @param <B> kind of result
     * @return results in the order of the inputs
     * @throws RuntimeException the first failure in the order of the inputs, after all have ended
     */
    public static <A, B> List<B> map(List<A> inputs, Function<A, String> name, Function<A, B> work, Progress progress) {
        AtomicInteger done = new AtomicInteger();
        return on(Runtime.getRuntime().availableProcessors(), inputs, input -> {
            B result = work.apply(input);
            synchronized (done) {
                progress.done(done.incrementAndGet(), inputs.size(), name.apply(input));
            }
            return result;
        });
    }

    /**
     * @param most threads at most
     * @param inputs inputs
     * @param work what to do with each; must not share what is not thread-safe
     * @param <A> kind of input
     * @param <B> kind of result
     * @return results in the order of the inputs
     * @throws RuntimeException the first failure in the order of the inputs, after all before it have ended
     */
    public static <A, B> List<B> on(int most, List<A> inputs, Function<A, B> work) {
        int threads = Math.max(1, Math.min(most, inputs.size()));
        ExecutorService pool = Executors.newFixedThreadPool(threads, Parallel::daemon);
        BooleanSupplier stop = Cancellation.current();
        try {
            List<Future<B>> futures = new ArrayList<>();
            for (A input : inputs) {
                futures.add(pool.submit(() -> Cancellation.during(stop, () -> work.apply(input))));
            }
            List<B> results = new ArrayList<>();
            for (Future<B> future : futures) {
                results.add(future.get());
            }
            return results;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "penstock-study");
        thread.setDaemon(true);
        return thread;
    }
}
