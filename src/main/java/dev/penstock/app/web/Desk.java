package dev.penstock.app.web;

import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.errors.PenstockException;
import dev.penstock.study.EngineRuns;
import java.time.Duration;
import java.util.Map;
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
 * answered.
 */
final class Desk implements AutoCloseable {

    private final Semaphore free;
    private final Duration patience;
    private final Map<String, AtomicLong> newest = new ConcurrentHashMap<>();
    private final EngineRuns runs;
    private final ExecutorService threads;
    /** What is balanced already is drawn here, so that drawing never holds up the next balance. */
    private final ExecutorService drawing = Executors.newSingleThreadExecutor(Desk::daemon);

    /**
     * @param runs gives the study
     * @param workers number of threads
     * @param patience how long one request may take
     */
    Desk(EngineRuns runs, int workers, Duration patience) {
        this.free = new Semaphore(workers);
        this.patience = patience;
        this.runs = runs;
        this.threads = Executors.newFixedThreadPool(workers, Desk::daemon);
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
            if (newest.size() > 1000) {
                newest.clear();
            }
            newest.computeIfAbsent(page, p -> new AtomicLong()).accumulateAndGet(number, Math::max);
        }
        long end = System.nanoTime() + patience.toNanos();
        try {
            if (!free.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                throw new Refusal(503, "the workbench is busy with other requests; try again");
            }
            Future<T> answer = threads.submit(() -> {
                try {
                    refuseStale(page, number);
                    return work.apply(runs.study());
                } finally {
                    free.release();
                }
            });
            return answerOf(answer, end);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(503, "the workbench is closing");
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
        Future<T> answer = drawing.submit(() -> {
            refuseStale(page, number);
            return work.get();
        });
        return answerOf(answer, System.nanoTime() + patience.toNanos());
    }

    private <T> T answerOf(Future<T> answer, long end) {
        try {
            return answer.get(Math.max(1, end - System.nanoTime()), TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(503, "the workbench is closing");
        } catch (TimeoutException e) {
            throw new Refusal(504, "no answer within " + patience.toSeconds() + " s; the work was given up");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private void refuseStale(String page, long number) {
        AtomicLong last = page.isEmpty() ? null : newest.get(page);
        if (last != null && last.get() > number) {
            throw new Refusal(409, "a newer question has replaced this one", Map.of("superseded", true));
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
        drawing.shutdownNow();
    }
}
