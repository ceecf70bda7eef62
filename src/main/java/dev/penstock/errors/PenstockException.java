package dev.penstock.errors;

/**
 * Root of every failure that Penstock reports on purpose. Each kind carries its parts as fields and one sentence as
 * message; {@code app} alone turns a kind into an exit code.
 */
public abstract sealed class PenstockException extends RuntimeException
        permits InvalidInput,
                OutsideValidity,
                PropertyFailure,
                NotConverged,
                LimitReached,
                SearchFailed,
                ConservationViolated {

    private static final long serialVersionUID = 1L;

    private final FailureSubject subject;

    PenstockException(String message) {
        this(message, FailureSubject.MODEL);
    }

    PenstockException(String message, FailureSubject subject) {
        super(message);
        this.subject = subject;
    }

    /** @return what could not be solved */
    public FailureSubject subject() {
        return subject;
    }
}
