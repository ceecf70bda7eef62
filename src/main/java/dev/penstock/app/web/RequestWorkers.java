package dev.penstock.app.web;

import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.errors.PenstockException;
import dev.penstock.numerics.Cancellation;
import dev.penstock.quantities.UnitSystem;
import dev.penstock.study.EngineRuns;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Does the work of requests on a few threads of its own, all with one study. Of the questions of one page only the newest is
 * answered; work on an older one, or on one whose time ran out, is stopped. No client has all threads at once, whatever pages
 * it names, and none has more than {@link ClientShare#MOST_OPEN} questions open.
 */
final class RequestWorkers implements AutoCloseable {

    /** Fewer than the server has threads for requests, so that some are left to refuse. */
    private static final int MOST_OPEN = 120;

    private static final int MOST_CLIENTS = 1000;
    static final int MOST_PAPERS = 3;

    private final Semaphore open = new Semaphore(MOST_OPEN);
    private final Semaphore free;
    private final Semaphore papers = new Semaphore(MOST_PAPERS);
    private final Duration patience;
    private final Map<String, ClientShare> clients = new LinkedHashMap<>();
    private final int share;
    private final EngineRuns runs;
    private final ExecutorService threads;
    /** What is balanced already is drawn here, so that drawing never holds up the next balance. */
    private final ExecutorService drawing = Executors.newSingleThreadExecutor(RequestWorkers::daemon);
    /**
     * Papers take long and much memory: one at a time, and apart from the drawings of pages. Few may wait, for a paper that
     * begins when its time is nearly over is work for nobody, and makes the next one late too.
     */
    private final ExecutorService printing = Executors.newSingleThreadExecutor(RequestWorkers::daemon);

    /**
     * @param runs gives the study
     * @param workers number of threads
     * @param patience how long one request may take
     */
    RequestWorkers(EngineRuns runs, int workers, Duration patience) {
        this.free = new Semaphore(workers, true);
        this.share = Math.max(1, workers - 1);
        this.patience = patience;
        this.runs = runs;
        this.threads = Executors.newFixedThreadPool(workers, RequestWorkers::daemon);
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "penstock-request");
        thread.setDaemon(true);
        return thread;
    }

    /** A question between its coming and its answer. */
    private record Question(Asker asker, ClientShare mine, long end) {

        void refuseReplaced() {
            if (mine.replaced(asker)) {
                throw new Refusal(409, "a newer question has replaced this one", Map.of("superseded", true));
            }
        }

        boolean unwanted() {
            return System.nanoTime() - end > 0 || mine.replaced(asker);
        }

        void acquire(Semaphore semaphore) throws InterruptedException {
            if (!semaphore.tryAcquire(end - System.nanoTime(), TimeUnit.NANOSECONDS)) {
                throw new Refusal(503, "Penstock is busy with other requests; try again");
            }
        }
    }

    /**
     * @param asker who asks
     * @param work what to do
     * @param <T> kind of answer
     * @return the answer
     * @throws Refusal with status 409 if the page has asked anew meanwhile, 503 or 504 if time runs out
     * @throws PenstockException if the work has no answer
     */
    <T> T ask(Asker asker, Function<EngineStudy, T> work) {
        return opened(asker, question -> {
            acquire(question);
            Future<T> answer = threads.submit(() -> {
                try {
                    return stoppable(question, () -> work.apply(runs.study()));
                } finally {
                    release(question);
                }
            });
            return answerOf(answer, question);
        });
    }

    /**
     * Does work that needs no study; what it writes is in the units of who asks.
     *
     * @param asker who asks
     * @param work what to do
     * @param <T> kind of answer
     * @return the answer
     * @throws Refusal with status 409 if the page has asked anew meanwhile, 503 if too much waits, 504 if time runs out
     */
    <T> T draw(Asker asker, Supplier<T> work) {
        return draw(asker, work, () -> {});
    }

    /**
     * As above, beside other work of this thread.
     *
     * @param asker who asks
     * @param work what to do
     * @param beside what this thread does meanwhile
     * @param <T> kind of answer
     * @return the answer of the first
     */
    <T> T draw(Asker asker, Supplier<T> work, Runnable beside) {
        UnitSystem units = UnitSystem.chosen();
        return opened(asker, question -> {
            Future<T> answer = drawing.submit(() -> stoppable(question, () -> units.reading(work)));
            beside.run();
            return answerOf(answer, question);
        });
    }

    /**
     * Does work on this thread that nobody waits for, as long as nobody asks anything; it is broken off where somebody does.
     *
     * @param work what to do
     * @return whether it came to an end
     */
    boolean whileIdle(Consumer<EngineStudy> work) {
        if (asked()) {
            return false;
        }
        try {
            return Cancellation.during(() -> asked() || closed(), () -> {
                work.accept(runs.study());
                return true;
            });
        } catch (CancellationException e) {
            return false;
        }
    }

    private boolean asked() {
        return open.availablePermits() < MOST_OPEN;
    }

    /** @return whether no more work is taken */
    boolean closed() {
        return threads.isShutdown();
    }

    /** As {@link #draw}, for papers; with status 503 at once if {@value #MOST_PAPERS} are printed or wait already. */
    <T> T print(Asker asker, Supplier<T> work) {
        return opened(asker, question -> {
            if (!papers.tryAcquire()) {
                throw new Refusal(503, MOST_PAPERS + " papers are being printed already; try again in a few seconds");
            }
            return answerOf(
                    printing.submit(() -> {
                        try {
                            return stoppable(question, work);
                        } finally {
                            papers.release();
                        }
                    }),
                    question);
        });
    }

    private <T> T opened(Asker asker, Function<Question, T> answer) {
        if (!open.tryAcquire()) {
            throw new Refusal(503, "Penstock is busy with other requests; try again");
        }
        try {
            ClientShare mine = opened(asker);
            try {
                return answer.apply(new Question(asker, mine, asker.since() + patience.toNanos()));
            } finally {
                mine.closed();
            }
        } finally {
            open.release();
        }
    }

    /** Counts a question in, and forgets a client that asks nothing if there are very many. */
    private ClientShare opened(Asker asker) {
        synchronized (clients) {
            if (clients.size() >= MOST_CLIENTS) {
                clients.values().removeIf(ClientShare::idle);
            }
            ClientShare mine = clients.computeIfAbsent(asker.client(), c -> new ClientShare(share));
            mine.opened(asker);
            return mine;
        }
    }

    private void acquire(Question question) {
        try {
            question.acquire(question.mine().threads());
            try {
                question.acquire(free);
            } catch (InterruptedException | Refusal e) {
                question.mine().threads().release();
                throw e;
            }
        } catch (InterruptedException e) {
            throw closing();
        }
    }

    private void release(Question question) {
        free.release();
        question.mine().threads().release();
    }

    private <T> T stoppable(Question question, Supplier<T> work) {
        question.refuseReplaced();
        if (question.unwanted()) {
            throw late();
        }
        try {
            return Cancellation.during(question::unwanted, work);
        } catch (CancellationException e) {
            question.refuseReplaced();
            throw late();
        }
    }

    private <T> T answerOf(Future<T> answer, Question question) {
        try {
            return answer.get(Math.max(1, question.end() - System.nanoTime()), TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            throw closing();
        } catch (TimeoutException e) {
            throw late();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private static Refusal closing() {
        Thread.currentThread().interrupt();
        return new Refusal(503, "Penstock is closing");
    }

    private Refusal late() {
        return new Refusal(504, "no answer within " + patience.toSeconds() + " s; the work was given up");
    }

    @Override
    public void close() {
        threads.shutdownNow();
        drawing.shutdownNow();
        printing.shutdownNow();
    }
}
