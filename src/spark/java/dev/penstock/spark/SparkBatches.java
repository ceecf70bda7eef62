package dev.penstock.spark;

import dev.penstock.study.Progress;
import dev.penstock.study.sample.BatchWorkers;
import dev.penstock.study.sample.SamplePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import org.apache.spark.api.java.JavaSparkContext;
import scala.jdk.javaapi.CollectionConverters;
import scala.reflect.ClassTag$;
import scala.runtime.AbstractFunction2;
import scala.runtime.BoxedUnit;

/**
 * Works at batches on a cluster, a batch a task. Workers send the file of a batch back; this process alone writes, so that a
 * batch is there once however often it was worked at, and workers need no folder in common.
 */
final class SparkBatches implements BatchWorkers {

    /** Files that may wait to be written, some 100 kB each. */
    private static final int WAITING = 64;

    private final JavaSparkContext spark;
    private final StudyFiles study;
    private final WorkerHome home;

    SparkBatches(JavaSparkContext spark, StudyFiles study, WorkerHome home) {
        this.spark = spark;
        this.study = study;
        this.home = home;
    }

    @Override
    public void work(
            SamplePlan plan, List<Integer> batches, Keeper keeper, Progress progress, BooleanSupplier cancelled) {
        if (batches.isEmpty()) {
            return;
        }
        int of = batches.stream().mapToInt(plan::points).sum();
        AtomicInteger done = new AtomicInteger();
        AtomicReference<RuntimeException> failure = new AtomicReference<>();
        // Where too many wait, Spark's own thread writes, which holds the workers' answers back.
        ThreadPoolExecutor writer = new ThreadPoolExecutor(
                1,
                1,
                0,
                TimeUnit.SECONDS,
                new ArrayBlockingQueue<>(WAITING),
                new ThreadPoolExecutor.CallerRunsPolicy());
        List<Object> partitions = new ArrayList<>();
        for (int i = 0; i < batches.size(); i++) {
            partitions.add(i);
        }
        try {
            spark.sc()
                    .runJob(
                            spark.parallelize(batches, batches.size()).rdd(),
                            new BatchTask(study, home),
                            CollectionConverters.asScala(partitions).toSeq(),
                            new AbstractFunction2<Object, byte[], BoxedUnit>() {
                                @Override
                                public BoxedUnit apply(Object index, byte[] parquet) {
                                    int batch = batches.get((Integer) index);
                                    writer.execute(() -> {
                                        try {
                                            keeper.keep(batch, parquet);
                                            progress.done(done.addAndGet(plan.points(batch)), of, "");
                                        } catch (RuntimeException e) {
                                            failure.compareAndSet(null, e);
                                            spark.sc().cancelAllJobs();
                                        }
                                    });
                                    return BoxedUnit.UNIT;
                                }
                            },
                            ClassTag$.MODULE$.apply(byte[].class));
        } catch (Exception e) { // of a job that was cancelled because its rows could not be kept, say why they could not
            if (failure.get() != null) {
                throw failure.get();
            }
            throw e;
        } finally {
            writer.shutdown();
            await(writer);
        }
        if (failure.get() != null) {
            throw failure.get();
        }
    }

    private static void await(ThreadPoolExecutor writer) {
        try {
            writer.awaitTermination(10, TimeUnit.MINUTES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
