package dev.penstock.app.web;

import dev.penstock.errors.PenstockException;
import dev.penstock.study.Axis;
import dev.penstock.study.Sweep;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Sweeps that run while the page asks how far they are. One at a time, since a sweep uses all processors. */
final class SweepJobs implements AutoCloseable {

    /** More points than a page shows well; the command line goes further. */
    static final int MOST_POINTS = 2500;

    private static final int KEPT = 8;

    private final Sweep sweep;
    private final Duration longest;
    private final Map<String, Job> jobs = new LinkedHashMap<>();

    /**
     * @param sweep runs a sweep
     * @param longest after this time a sweep is stopped and keeps what is done
     */
    SweepJobs(Sweep sweep, Duration longest) {
        this.sweep = sweep;
        this.longest = longest;
    }

    /** One sweep. */
    static final class Job {

        private final int points;
        private volatile int done;
        private volatile boolean cancelled;
        private volatile Optional<Sweep.Result> result = Optional.empty();
        private volatile Optional<String> failure = Optional.empty();

        private Job(int points) {
            this.points = points;
        }

        void cancel() {
            cancelled = true;
        }

        boolean running() {
            return result.isEmpty() && failure.isEmpty();
        }

        Optional<Sweep.Result> result() {
            return result;
        }

        Map<String, Object> state() {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("done", Math.min(done, points));
            map.put("of", points);
            map.put("running", running());
            map.put("cancelled", cancelled);
            failure.ifPresent(text -> map.put("failure", text));
            return map;
        }
    }

    /**
     * @param text text of a concept
     * @param changes values that replace or add to what the text says
     * @param axes inputs to vary
     * @param samples engines to sample about each combination; 0 for none
     * @return id of the sweep
     * @throws Refusal if another one runs, or it would be too large
     */
    synchronized String start(String text, Map<String, String> changes, List<Axis> axes, int samples) {
        if (jobs.values().stream().anyMatch(Job::running)) {
            throw new Refusal(429, "another sweep is running; stop it first");
        }
        long points = axes.stream().mapToLong(a -> a.values().size()).reduce(1, (a, b) -> Math.min(a * b, 1_000_000));
        if (axes.isEmpty() || axes.size() > 2 || points > MOST_POINTS) {
            throw new Refusal(422, "vary one or two inputs, " + MOST_POINTS + " combinations at most");
        }
        if (samples < 0 || samples == 1 || samples > 0 && axes.size() > 1 || points * (1 + samples) > MOST_POINTS) {
            throw new Refusal(
                    422, "a band needs one input and 2 samples or more, " + MOST_POINTS + " balances at most in all");
        }
        String id = UUID.randomUUID().toString();
        Job job = new Job((int) points * (1 + samples));
        jobs.put(id, job);
        while (jobs.size() > KEPT) {
            jobs.remove(jobs.keySet().iterator().next());
        }
        long end = System.nanoTime() + longest.toNanos();
        Thread thread = new Thread(() -> run(job, text, changes, axes, samples, end), "penstock-sweep");
        thread.setDaemon(true);
        thread.start();
        return id;
    }

    private void run(Job job, String text, Map<String, String> changes, List<Axis> axes, int samples, long end) {
        try {
            Path file = Files.createTempFile("penstock-", ".toml");
            try {
                Files.writeString(file, text);
                job.result = Optional.of(sweep.run(
                        file, changes, axes, samples, (done, of, what) -> job.done = done, () -> stop(job, end)));
            } finally {
                Files.delete(file);
            }
        } catch (PenstockException e) {
            job.failure = Optional.of(e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            if (job.running()) {
                job.failure = Optional.of("the sweep broke off; this is a defect");
            }
        }
    }

    private static boolean stop(Job job, long end) {
        if (System.nanoTime() - end > 0) {
            job.cancelled = true;
        }
        return job.cancelled;
    }

    /**
     * @param id id of a sweep
     * @return the sweep
     * @throws Refusal with status 404 if there is none
     */
    synchronized Job job(String id) {
        Job job = jobs.get(id);
        if (job == null) {
            throw new Refusal(404, "there is no such sweep any more");
        }
        return job;
    }

    @Override
    public synchronized void close() {
        jobs.values().forEach(Job::cancel);
    }
}
