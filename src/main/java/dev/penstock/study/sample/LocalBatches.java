package dev.penstock.study.sample;

import dev.penstock.numerics.Cancellation;
import dev.penstock.study.Parallel;
import dev.penstock.study.Progress;
import java.util.List;
import java.util.concurrent.CancellationException;
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
        Parallel.on(threads, batches, batch -> {
            try {
                boolean wanted = !stop.getAsBoolean();
                if (wanted) {
                    keeper.keep(
                            batch,
                            Cancellation.during(stop, () -> plan.parquet(batch, () -> tell(progress, done, of))));
                }
                return wanted;
            } catch (CancellationException e) {
                // The batch is dropped: it is begun again by the next run.
                return false;
            } catch (RuntimeException | Error e) {
                failed.set(true);
                throw e;
            }
        });
    }

    private static void tell(Progress progress, AtomicInteger done, int of) {
        synchronized (done) {
            progress.done(done.incrementAndGet(), of, "");
        }
    }
}
