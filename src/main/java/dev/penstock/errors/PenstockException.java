package dev.penstock.errors;

/**
 * Root of every failure that Penstock reports on purpose. Each kind carries its parts as fields and one sentence as
 * message; {@code app} alone turns a kind into an exit code.
 */
public abstract sealed class PenstockException extends RuntimeException
        permits InvalidInput, OutsideValidity, PropertyFailure, NotConverged, LimitReached, ConservationViolated {

    private static final long serialVersionUID = 1L;

    PenstockException(String message) {
        super(message);
    }

    PenstockException(String message, Throwable cause) {
        super(message, cause);
    }
}
