package dev.penstock.app.web;

import java.util.Map;

/** A request that is not served, with the status and what to tell the browser. */
final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient Map<String, Object> details;

    /**
     * @param status HTTP status
     * @param message one sentence
     */
    Refusal(int status, String message) {
        this(status, message, Map.of());
    }

    /**
     * @param status HTTP status
     * @param message one sentence
     * @param details further fields of the answer
     */
    Refusal(int status, String message, Map<String, Object> details) {
        super(message);
        this.status = status;
        this.details = Map.copyOf(details);
    }

    int status() {
        return status;
    }

    Map<String, Object> details() {
        return details;
    }
}
