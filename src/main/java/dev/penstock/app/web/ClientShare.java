package dev.penstock.app.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Semaphore;

/**
 * What one client has of the server: how many of its questions are worked on, how many may wait, and which is the newest of
 * each of its pages. Clients know nothing of each other: no page of one replaces a question of another.
 */
final class ClientShare {

    /** Far more than the connections that a browser opens. */
    static final int MOST_OPEN = 24;

    private static final int MOST_PAGES = 1000;

    private final int share;
    private final Semaphore threads;
    private final Map<String, Long> newest = new LinkedHashMap<>();
    private int open;

    /** @param threads how many of its questions are worked on at once; the others wait in order */
    ClientShare(int threads) {
        this.share = threads;
        this.threads = new Semaphore(threads, true);
    }

    Semaphore threads() {
        return threads;
    }

    /**
     * Counts a question in, until it is {@link #closed}.
     *
     * @throws Refusal with status 503 if too many are open
     */
    synchronized void opened(Asker asker) {
        if (open >= MOST_OPEN) {
            throw new Refusal(503, "this browser has " + MOST_OPEN + " questions open; wait for their answers");
        }
        open++;
        if (!asker.page().isEmpty()) {
            newest.merge(asker.page(), asker.number(), Math::max);
            if (newest.size() > MOST_PAGES) {
                newest.remove(newest.keySet().iterator().next());
            }
        }
    }

    synchronized void closed() {
        open--;
    }

    /** @return whether nothing of it is open, nor still worked on */
    synchronized boolean idle() {
        return open == 0 && threads.availablePermits() == share;
    }

    /** @return whether its page has asked anew since */
    synchronized boolean replaced(Asker asker) {
        return newest.getOrDefault(asker.page(), asker.number()) > asker.number();
    }
}
