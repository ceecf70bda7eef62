package dev.penstock.spark;

import java.io.Serializable;
import org.apache.spark.TaskContext;
import scala.collection.Iterator;
import scala.runtime.AbstractFunction2;

/** Makes the file of one batch on a worker. */
final class BatchTask extends AbstractFunction2<TaskContext, Iterator<Integer>, byte[]> implements Serializable {

    private static final long serialVersionUID = 1L;

    private final StudyFiles study;
    private final WorkerHome home;

    BatchTask(StudyFiles study, WorkerHome home) {
        this.study = study;
        this.home = home;
    }

    @Override
    public byte[] apply(TaskContext task, Iterator<Integer> batches) {
        return study.open(home).parquet(batches.next(), () -> {
            if (task.isInterrupted()) {
                throw new java.util.concurrent.CancellationException("the task was stopped");
            }
        });
    }
}
