package dev.penstock.app.web;

import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.Cancellation;
import io.javalin.config.RoutesConfig;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CancellationException;

/**
 * Long work that runs while the page asks how far it is. One piece at a time, since each uses all processors.
 *
 * @param <T> kind of result
 */
final class Jobs<T> implements AutoCloseable {

    /** Pieces of work whose progress is a share of the whole. */
    static final int HUNDREDTHS = 100;

    private static final int KEPT = 8;
    /** Longest wait for a job that was told to stop. */
    private static final Duration STOPPING = Duration.ofSeconds(5);

    private final String what;
    private final Duration longest;
    private final Map<String, Job<T>> jobs = new LinkedHashMap<>();

    /**
     * @param what what a piece of work is, for messages
     * @param longest after this time it is stopped
     */
    Jobs(String what, Duration longest) {
        this.what = what;
        this.longest = longest;
    }

    /** What is to be done; it looks at the job now and then. */
    @FunctionalInterface
    interface Work<T> {

        /**
         * @param job told how far it is, and asked whether to stop
         * @return the result, of a stopped job what is done so far
         * @throws CancellationException if it was stopped and has nothing to show
         */
        T run(Job<T> job);
    }

    /** One piece of work. */
    static final class Job<T> {

        private final int of;
        private final long end;
        private volatile int done;
        private volatile boolean cancelled;
        private volatile String doing = "";
        private volatile Optional<T> early = Optional.empty();
        private volatile Optional<T> result = Optional.empty();
        private volatile Optional<String> failure = Optional.empty();

        private Job(int of, Duration longest) {
            this.of = of;
            this.end = System.nanoTime() + longest.toNanos();
        }

        void at(int pieces) {
            done = pieces;
        }

        void at(int pieces, String what) {
            done = pieces;
            doing = what;
        }

        /** @param rough a first answer, to be shown while the work goes on */
        void early(T rough) {
            early = Optional.of(rough);
        }

        void cancel() {
            cancelled = true;
        }

        /** @return whether to stop, because somebody said so or time ran out */
        boolean stopped() {
            if (System.nanoTime() - end > 0) {
                cancelled = true;
            }
            return cancelled;
        }

        boolean running() {
            return result.isEmpty() && failure.isEmpty();
        }

        Optional<T> result() {
            return result;
        }

        Map<String, Object> state() {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("done", Math.min(done, of));
            map.put("of", of);
            map.put("doing", doing);
            map.put("early", early.isPresent());
            map.put("running", running());
            map.put("cancelled", cancelled);
            failure.ifPresent(text -> map.put("failure", text));
            return map;
        }
    }

    /** Lets a page ask how far a job is, and stop it. */
    void addTo(RoutesConfig routes, String path) {
        routes.get(
                path + "/{id}",
                request ->
                        LocalServer.json(request, job(request.pathParam("id")).state()));
        routes.post(path + "/{id}/stop", request -> {
            job(request.pathParam("id")).cancel();
            LocalServer.json(request, Map.of());
        });
    }

    /**
     * @param of pieces that the work has
     * @param work what to do
     * @return id of the job
     * @throws Refusal with status 429 if another one runs
     */
    synchronized String start(int of, Work<T> work) {
        awaitStopped();
        if (jobs.values().stream().anyMatch(Job::running)) {
            throw new Refusal(429, "another " + what + " is running; stop it first");
        }
        String id = UUID.randomUUID().toString();
        Job<T> job = new Job<>(of, longest);
        jobs.put(id, job);
        while (jobs.size() > KEPT) {
            jobs.remove(jobs.keySet().iterator().next());
        }
        Thread thread = new Thread(() -> run(job, work), "penstock-" + what);
        thread.setDaemon(true);
        thread.start();
        return id;
    }

    /** A job that was told to stop ends soon; whoever left its page may begin the next one at once. */
    private void awaitStopped() {
        long end = System.nanoTime() + STOPPING.toNanos();
        while (jobs.values().stream().anyMatch(j -> j.running() && j.cancelled) && System.nanoTime() < end) {
            try {
                wait(STOPPING.toMillis() / HUNDREDTHS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private void run(Job<T> job, Work<T> work) {
        try {
            job.result = Optional.of(Cancellation.during(job::stopped, () -> work.run(job)));
        } catch (PenstockException | Refusal e) {
            job.failure = Optional.of(e.getMessage());
        } catch (CancellationException e) {
            job.failure = Optional.of("the " + what + " was stopped");
        } finally {
            if (job.running()) {
                job.failure = Optional.of("the " + what + " broke off; this is a defect");
            }
        }
    }

    /**
     * @param id id of a job
     * @return the job
     * @throws Refusal with status 404 if there is none
     */
    synchronized Job<T> job(String id) {
        Job<T> job = jobs.get(id);
        if (job == null) {
            throw new Refusal(404, "there is no such " + what + " any more");
        }
        return job;
    }

    /**
     * @param id id of a job
     * @return its result
     * @throws Refusal if there is none
     */
    T result(String id) {
        return job(id).result().orElseThrow(() -> new Refusal(409, "this " + what + " has no result yet"));
    }

    /**
     * @param id id of a job
     * @return its result, or a first answer while it goes on
     * @throws Refusal if there is neither
     */
    T soFar(String id) {
        Job<T> job = job(id);
        return job.result()
                .or(() -> job.early)
                .orElseThrow(() -> new Refusal(409, "this " + what + " has no result yet"));
    }

    @Override
    public synchronized void close() {
        jobs.values().forEach(Job::cancel);
    }
}
