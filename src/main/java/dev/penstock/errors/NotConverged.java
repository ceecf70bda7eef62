package dev.penstock.errors;

import java.util.Locale;

/** An iteration ended without a solution. */
public final class NotConverged extends PenstockException {

    private static final long serialVersionUID = 1L;

    private final String what;
    private final String detail;
    private final int iterations;
    private final double worstResidual;

    /**
     * @param what what was being solved, and for which residual it failed
     * @param iterations iterations or evaluations done
     * @param worstResidual worst scaled residual reached (-); may be infinite when none was computed
     * @param detail bounds touched, or the cause, as the end of a sentence
     */
    public NotConverged(String what, int iterations, double worstResidual, String detail) {
        this(FailureSubject.MODEL, what, iterations, worstResidual, detail);
    }

    /**
     * @param subject what could not be solved
     * @param what the same in words, and for which residual it failed
     * @param iterations iterations or evaluations done
     * @param worstResidual worst scaled residual reached (-); may be infinite when none was computed
     * @param detail bounds touched, or the cause, as the end of a sentence
     */
    public NotConverged(FailureSubject subject, String what, int iterations, double worstResidual, String detail) {
        super(null, subject);
        this.what = what;
        this.detail = detail;
        this.iterations = iterations;
        this.worstResidual = worstResidual;
    }

    private NotConverged(FailureSubject subject, String what) {
        super(what + " was not found within the work of a search", subject);
        this.what = what;
        this.detail = "";
        this.iterations = 0;
        this.worstResidual = Double.POSITIVE_INFINITY;
    }

    /**
     * A search that was ended since the work it may take was spent.
     *
     * @param subject what could not be solved
     * @param what the same in words
     * @return the failure
     */
    public static NotConverged outOfWork(FailureSubject subject, String what) {
        return new NotConverged(subject, what);
    }

    /** The sentence, written when it is read: searches throw many that nobody reads. */
    @Override
    public String getMessage() {
        String given = super.getMessage();
        return given != null
                ? given
                : String.format(
                        Locale.ROOT,
                        "%s did not converge in %d iterations (worst residual %.3g): %s",
                        what,
                        iterations,
                        worstResidual,
                        detail);
    }

    /** @return what was being solved */
    public String what() {
        return what;
    }

    /** @return iterations done */
    public int iterations() {
        return iterations;
    }

    /** @return worst scaled residual reached (-) */
    public double worstResidual() {
        return worstResidual;
    }
}
