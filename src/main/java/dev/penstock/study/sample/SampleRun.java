package dev.penstock.study.sample;

import dev.penstock.study.Progress;
import dev.penstock.study.store.BatchFolder;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * What a run of a study has done.
 *
 * @param batches batches of the study
 * @param skipped batches that earlier runs had finished
 * @param worked batches that this run has finished
 */
public record SampleRun(int batches, int skipped, int worked) {

    /**
     * Works at what is not finished.
     *
     * @param plan the study
     * @param out its folder
     * @param workers who works
     * @param progress told of points that are done
     * @param cancelled asked at every point
     * @return what was done
     */
    public static SampleRun of(
            SamplePlan plan, BatchFolder out, BatchWorkers workers, Progress progress, BooleanSupplier cancelled) {
        BitSet finished = out.finished();
        List<Integer> open = IntStream.range(0, plan.batches())
                .filter(batch -> !finished.get(batch))
                .boxed()
                .toList();
        AtomicInteger worked = new AtomicInteger();
        workers.work(
                plan,
                open,
                (batch, parquet) -> {
                    out.keep(batch, parquet);
                    worked.incrementAndGet();
                },
                progress,
                cancelled);
        return new SampleRun(plan.batches(), plan.batches() - open.size(), worked.get());
    }

    /** @return whether all batches are finished */
    public boolean complete() {
        return skipped + worked == batches;
    }
}
