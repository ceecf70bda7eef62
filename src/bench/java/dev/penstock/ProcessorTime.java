package dev.penstock;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/** Processor time of this thread instead of wall-clock time, for machines that are busy with other work. */
public final class ProcessorTime {

    private ProcessorTime() {}

    /**
     * @param repeats runs
     * @param run what is timed
     * @return processor time of the fastest run (ms)
     */
    public static double best(int repeats, Runnable run) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < repeats; i++) {
            long start = clock.getCurrentThreadCpuTime();
            run.run();
            best = Math.min(best, (clock.getCurrentThreadCpuTime() - start) / 1e6);
        }
        return best;
    }
}
