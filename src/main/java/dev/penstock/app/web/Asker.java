package dev.penstock.app.web;

import io.javalin.http.Context;

/**
 * Who asks a question, and since when: all steps of its answer share one time limit.
 *
 * @param client browser that was let in; the server names it, and nobody can choose the name
 * @param page page of that browser, by a name that it chooses; empty if its questions do not replace each other
 * @param number number of the question on that page, rising
 * @param since when it came, on the clock of {@link System#nanoTime} (ns)
 */
record Asker(String client, String page, long number, long since) {

    /** A question that comes now. */
    Asker(String client, String page, long number) {
        this(client, page, number, System.nanoTime());
    }

    /** @return who sends a request that replaces no other */
    static Asker of(Context request) {
        return new Asker(Gate.client(request), "", 0);
    }

    /** @return who sends a request, and from which page */
    static Asker of(Context request, RequestBody body) {
        return new Asker(Gate.client(request), body.text("page"), body.number("number"));
    }
}
