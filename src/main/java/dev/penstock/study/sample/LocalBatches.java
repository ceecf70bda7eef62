package dev.penstock.study.sample;

import dev.penstock.numerics.Cancellation;
import dev.penstock.study.Progress;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/** Works at batches on the cores of this machine, a batch a thread. */
public final class LocalBatches implements BatchWorkers {

    private final int threads;

    /** @param threads how many threads, 1 or more */
    public LocalBatches(int threads) {
        this.threads = threads;
    }

    @Override
    public void work(
            SamplePlan plan, List<Integer> batches, Keeper keeper, Progress progress, BooleanSupplier cancelled) {
        int of = batches.stream().mapToInt(plan::points).sum();
        AtomicInteger done = new AtomicInteger();
        AtomicBoolean failed = new AtomicBoolean();
        BooleanSupplier stop = () -> failed.get() || cancelled.getAsBoolean();
        Iterator<Integer> open = batches.iterator();
        ExecutorService pool = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "penstock-sample");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<?>> futures = new ArrayList<>();
            for (int i = 0; i < Math.min(threads, batches.size()); i++) {
                futures.add(pool.submit(() -> {
                    try {
                        for (Optional<Integer> batch = next(open, stop); batch.isPresent(); batch = next(open, stop)) {
                            int number = batch.get();
                            keeper.keep(
                                    number,
                                    Cancellation.during(
                                            stop, () -> plan.parquet(number, () -> tell(progress, done, of))));
                        }
                    } catch (CancellationException e) {
                        // The batch is dropped: it is begun again by the next run.
                    } catch (RuntimeException | Error e) {
                        failed.set(true);
                        throw e;
                    }
                }));
            }
            for (Future<?> future : futures) {
                future.get();
            }
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

    private static Optional<Integer> next(Iterator<Integer> open, BooleanSupplier stop) {
        synchronized (open) {
            return open.hasNext() && !stop.getAsBoolean() ? Optional.of(open.next()) : Optional.empty();
        }
    }

    private static void tell(Progress progress, AtomicInteger done, int of) {
        synchronized (done) {
            progress.done(done.incrementAndGet(), of, "");
        }
    }
}
