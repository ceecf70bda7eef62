package dev.penstock.app.web;

import io.javalin.http.Context;

/**
 * Who asks a question.
 *
 * @param client browser that was let in; the server names it, and nobody can choose the name
 * @param page page of that browser, by a name that it chooses; empty if its questions do not replace each other
 * @param number number of the question on that page, rising
 */
record Asker(String client, String page, long number) {

    /** @return who sends a request that replaces no other */
    static Asker of(Context request) {
        return new Asker(Gate.client(request), "", 0);
    }

    /** @return who sends a request, and from which page */
    static Asker of(Context request, RequestBody body) {
        return new Asker(Gate.client(request), body.text("page"), body.number("number"));
    }
}
