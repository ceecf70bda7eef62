package dev.penstock.app.web;

import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.Cancellation;
import dev.penstock.study.EngineRuns;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Does the work of requests on a few threads of its own, all with one study. Of the questions of one page only the newest is
 * answered; work on an older one, or on one whose time ran out, is stopped. A page never has all threads at once.
 */
final class RequestWorkers implements AutoCloseable {

    private static final int MOST_PAGES = 1000;

    private final Semaphore free;
    private final Duration patience;
    private final Map<String, AtomicLong> newest = new ConcurrentHashMap<>();
    private final Map<String, Semaphore> shares = new ConcurrentHashMap<>();
    private final int share;
    private final EngineRuns runs;
    private final ExecutorService threads;
    /** What is balanced already is drawn here, so that drawing never holds up the next balance. */
    private final ExecutorService drawing = Executors.newSingleThreadExecutor(RequestWorkers::daemon);

    /**
     * @param runs gives the study
     * @param workers number of threads
     * @param patience how long one request may take
     */
    RequestWorkers(EngineRuns runs, int workers, Duration patience) {
        this.free = new Semaphore(workers);
        this.share = Math.max(1, workers - 1);
        this.patience = patience;
        this.runs = runs;
        this.threads = Executors.newFixedThreadPool(workers, RequestWorkers::daemon);
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "penstock-workbench");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * @param page which page asks; empty if its questions do not replace each other
     * @param number number of the question on that page, rising
     * @param work what to do
     * @param <T> kind of answer
     * @return the answer
     * @throws Refusal with status 409 if the page has asked anew meanwhile, 503 or 504 if time runs out
     * @throws PenstockException if the work has no answer
     */
    <T> T ask(String page, long number, Function<EngineStudy, T> work) {
        if (!page.isEmpty()) {
            if (newest.size() > MOST_PAGES) {
                newest.clear();
                shares.clear();
            }
            newest.computeIfAbsent(page, p -> new AtomicLong()).accumulateAndGet(number, Math::max);
        }
        long end = System.nanoTime() + patience.toNanos();
        Semaphore mine = shares.computeIfAbsent(page, p -> new Semaphore(share));
        try {
            acquire(mine, end);
            try {
                acquire(free, end);
            } catch (InterruptedException | Refusal e) {
                mine.release();
                throw e;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(503, "the workbench is closing");
        }
        Future<T> answer = threads.submit(() -> {
            try {
                return stoppable(end, page, number, () -> work.apply(runs.study()));
            } finally {
                free.release();
                mine.release();
            }
        });
        return answerOf(answer, end);
    }

    private static void acquire(Semaphore semaphore, long end) throws InterruptedException {
        if (!semaphore.tryAcquire(end - System.nanoTime(), TimeUnit.NANOSECONDS)) {
            throw new Refusal(503, "the workbench is busy with other requests; try again");
        }
    }

    private <T> T stoppable(long end, String page, long number, Supplier<T> work) {
        refuseStale(page, number);
        try {
            return Cancellation.during(() -> System.nanoTime() - end > 0 || stale(page, number), work);
        } catch (CancellationException e) {
            refuseStale(page, number);
            throw late();
        }
    }

    /**
     * Does work that needs no study.
     *
     * @param page which page asks; empty if its questions do not replace each other
     * @param number number of the question on that page, rising
     * @param work what to do
     * @param <T> kind of answer
     * @return the answer
     * @throws Refusal with status 409 if the page has asked anew meanwhile, 504 if time runs out
     */
    <T> T draw(String page, long number, Supplier<T> work) {
        long end = System.nanoTime() + patience.toNanos();
        return answerOf(drawing.submit(() -> stoppable(end, page, number, work)), end);
    }

    private <T> T answerOf(Future<T> answer, long end) {
        try {
            return answer.get(Math.max(1, end - System.nanoTime()), TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(503, "the workbench is closing");
        } catch (TimeoutException e) {
            throw late();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private Refusal late() {
        return new Refusal(504, "no answer within " + patience.toSeconds() + " s; the work was given up");
    }

    private boolean stale(String page, long number) {
        AtomicLong last = page.isEmpty() ? null : newest.get(page);
        return last != null && last.get() > number;
    }

    private void refuseStale(String page, long number) {
        if (stale(page, number)) {
            throw new Refusal(409, "a newer question has replaced this one", Map.of("superseded", true));
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
        drawing.shutdownNow();
    }
}
