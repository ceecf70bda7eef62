package dev.penstock.study.sample;

import dev.penstock.study.Progress;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Whoever works at the batches of a study: the cores of this machine, or others. */
public interface BatchWorkers {

    /** Keeps the file of a finished batch. Called by one thread at a time or by many. */
    @FunctionalInterface
    interface Keeper {

        /**
         * @param batch number of the batch
         * @param parquet its file
         */
        void keep(int batch, byte[] parquet);
    }

    /**
     * @param plan the study
     * @param batches numbers of the batches to work at
     * @param keeper takes each finished batch
     * @param progress told of points that are done, of those of these batches
     * @param cancelled once it says yes no batch is begun, and those begun are dropped
     */
    void work(SamplePlan plan, List<Integer> batches, Keeper keeper, Progress progress, BooleanSupplier cancelled);
}
